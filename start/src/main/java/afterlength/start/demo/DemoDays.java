package afterlength.start.demo;

import afterlength.workshop.work.Step;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Lays the steps of a case one behind the other into working days, each after the wait of the one before. */
final class DemoDays {
    private static final LocalTime OPEN = LocalTime.of(9, 0);
    private static final LocalTime CLOSE = LocalTime.of(17, 30);

    /** A step as it was lived. */
    record Lived(Step step, LocalDateTime from, LocalDateTime to) {}

    private DemoDays() {}

    static List<Lived> lay(List<Step> steps, LocalDate first) {
        List<Lived> lived = new ArrayList<>();
        LocalDateTime free = first.atTime(OPEN);
        for (Step step : steps) {
            Duration hands = Duration.ofMinutes(step.handsTypicalMin());
            LocalDateTime from = open(free, hands);
            LocalDateTime to = from.plus(hands);
            lived.add(new Lived(step, from, to));
            free = to.plusMinutes(Math.round(step.waitTypicalH() * 60)).plusMinutes(10);
        }
        return lived;
    }

    /** The next time at which hands can work this long before the shop closes. */
    private static LocalDateTime open(LocalDateTime free, Duration hands) {
        LocalDateTime at =
                free.toLocalTime().isBefore(OPEN) ? free.toLocalDate().atTime(OPEN) : free;
        if (at.plus(hands).isAfter(at.toLocalDate().atTime(CLOSE))) {
            at = at.toLocalDate().plusDays(1).atTime(OPEN);
        }
        while (at.getDayOfWeek() == DayOfWeek.SATURDAY || at.getDayOfWeek() == DayOfWeek.SUNDAY) {
            at = at.toLocalDate().plusDays(1).atTime(OPEN);
        }
        return at;
    }
}
