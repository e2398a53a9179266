package afterlength.workshop.plan;

import afterlength.workshop.paper.CalendarEntry;
import afterlength.workshop.paper.ICalendar;
import afterlength.workshop.work.HouseVisit;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The plan for other calendars: hands as spans, promised days as days. Owners' names stay in the shop. */
final class PlanCalendar {
    private PlanCalendar() {}

    static String of(CheckedPlan plan, Instant now) {
        List<CalendarEntry> entries = new ArrayList<>();
        plan.lines().stream()
                .filter(line -> line.place().hasHands() && !line.piece().begun())
                .map(line -> hands(line, now))
                .forEach(entries::add);
        for (HouseVisit visit : plan.bench().visits()) {
            LocalDate promised = visit.promisedOn();
            if (promised != null) {
                entries.add(CalendarEntry.day(
                        "visit-" + visit.visitId() + "-promised@afterlength",
                        promised,
                        "Promised: " + visit.instrument(),
                        visit.number(),
                        now));
            }
        }
        return ICalendar.of(entries);
    }

    private static CalendarEntry hands(PlannedLine line, Instant now) {
        return CalendarEntry.span(
                "step-" + line.piece().step().id() + "-" + line.piece().part() + "@afterlength",
                line.place().start(),
                Duration.between(line.place().start(), line.place().handsEnd()),
                line.name() + " – " + line.visit().instrument(),
                line.place().hand() + (line.place().hasWait() ? "; " + PlanWords.until(line.place()) : ""),
                now);
    }
}
