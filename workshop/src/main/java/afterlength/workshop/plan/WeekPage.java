package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The week at a glance.
 *
 * @param drawing the week as SVG; empty when there is nothing to draw
 * @param instead what is said when there is no plan to show
 * @param planning whether a plan is being made behind the page, since something was agreed
 * @param notice what just happened, or null
 */
record WeekPage(
        Frame frame,
        LocalDate first,
        String sentence,
        String why,
        String drawing,
        List<Day> days,
        List<PlanChange.VisitLine> visits,
        List<Absence> absences,
        String instead,
        boolean planning,
        @Nullable String notice) {

    /** One day's hands, and what is ready then. */
    record Day(LocalDate date, List<PlannedLine> lines, List<String> notes) {}

    String weekBefore() {
        return first.minusWeeks(1).toString();
    }

    String weekAfter() {
        return first.plusWeeks(1).toString();
    }

    boolean empty() {
        return drawing.isEmpty();
    }
}
