package afterlength.workshop.plan;

import afterlength.planner.bench.Span;
import afterlength.workshop.desk.Days;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Turns hours of the week into stretches of elapsed time, day by day, so that a change of the clocks falls where it falls. */
final class BenchCalendar {
    private final BenchRules rules;
    private final List<Absence> absences;
    private final LocalTime usualClosing;

    BenchCalendar(BenchRules rules, List<Absence> absences, LocalTime usualClosing) {
        this.rules = rules;
        this.absences = absences;
        this.usualClosing = usualClosing;
    }

    /** When this person works, from a day on. */
    List<Span> hours(String hand, BenchTime time, LocalDate first, int days) {
        List<Span> spans = new ArrayList<>();
        for (LocalDate day = first; day.isBefore(first.plusDays(days)); day = day.plusDays(1)) {
            LocalDate at = day;
            if (absences.stream().noneMatch(absence -> absence.holds(hand, at))) {
                add(spans, time, day, rules.of(hand));
            }
        }
        return spans;
    }

    List<Span> glueHours(BenchTime time, LocalDate first, int days) {
        List<Span> spans = new ArrayList<>();
        for (LocalDate day = first; day.isBefore(first.plusDays(days)); day = day.plusDays(1)) {
            add(spans, time, day, rules.glueHours());
        }
        return spans;
    }

    private static void add(List<Span> spans, BenchTime time, LocalDate day, WeekHours hours) {
        for (Stretch stretch : hours.on(day.getDayOfWeek())) {
            int from = time.minute(Days.instant(day.atTime(stretch.from())));
            int to = time.minute(Days.instant(day.atTime(stretch.to())));
            if (from < to) {
                spans.add(new Span(from, to));
            }
        }
    }

    boolean isOpen(LocalDate day) {
        return !rules.hours().on(day.getDayOfWeek()).isEmpty();
    }

    LocalTime closing(LocalDate day) {
        return rules.hours().findClosing(day.getDayOfWeek()).orElse(usualClosing);
    }

    /** Ready by the end of this day. */
    Instant closingAt(LocalDate day) {
        return Days.instant(day.atTime(closing(day)));
    }

    /** The first open day at whose end everything is ready. */
    LocalDate readyDay(Instant ready) {
        LocalDate day = Days.day(ready);
        for (int n = 0; n < 400 && (!isOpen(day) || closingAt(day).isBefore(ready)); n++) {
            day = day.plusDays(1);
        }
        return day;
    }
}
