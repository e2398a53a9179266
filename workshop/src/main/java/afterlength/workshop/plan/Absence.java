package afterlength.workshop.plan;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Days on which somebody is not at the bench: ill, on holiday, at a market.
 *
 * @param away who
 * @param toDay the last such day
 * @param hand who wrote it down
 */
public record Absence(
        long id,
        @Nullable Long replaces,
        boolean withdrawn,
        String away,
        LocalDate fromDay,
        LocalDate toDay,
        String reason,
        String hand,
        Instant writtenAt) {
    public Absence {
        if (toDay.isBefore(fromDay)) {
            throw new IllegalArgumentException(
                    "an absence from " + fromDay + " to " + toDay + " ends before it begins");
        }
    }

    boolean holds(String who, LocalDate day) {
        return away.equals(who) && !day.isBefore(fromDay) && !day.isAfter(toDay);
    }
}
