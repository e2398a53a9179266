package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;

/**
 * The planner's minutes: time elapsed since a Monday 00:00 in the shop, so that a night on which the clocks change is an hour longer or
 * shorter, as it is for glue.
 */
record BenchTime(Instant monday) {
    /** A plan moves on a grid of this many minutes. */
    static final int GRID_MIN = 5;

    static BenchTime weekOf(Instant at) {
        LocalDate monday = Days.day(at).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new BenchTime(Days.instant(monday.atStartOfDay()));
    }

    /** The minute that has begun. */
    int minute(Instant at) {
        return Math.toIntExact(Math.floorDiv(Duration.between(monday, at).toSeconds(), 60));
    }

    /** The next minute of the grid that is still to come: what happened at that very second lies before it. */
    int next(Instant at) {
        return (Math.floorDiv(minute(at), GRID_MIN) + 1) * GRID_MIN;
    }

    Instant at(int minute) {
        return monday.plus(Duration.ofMinutes(minute));
    }

    /** Up to the grid. */
    static int whole(double minutes) {
        return (int) Math.ceil(minutes / GRID_MIN - 1e-9) * GRID_MIN;
    }
}
