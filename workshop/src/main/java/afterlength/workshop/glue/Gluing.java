package afterlength.workshop.glue;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A joint glued from a batch, in the air of its moment.
 *
 * @param partC temperature of the parts, when it was felt or read
 * @param clampH how long it is to stay clamped
 */
public record Gluing(
        long id,
        @Nullable Long replaces,
        boolean withdrawn,
        long batchId,
        @Nullable Long visitId,
        String joint,
        @Nullable Double usedG,
        @Nullable Double partC,
        @Nullable Double temperatureC,
        @Nullable Double humidityPct,
        AirFrom airFrom,
        @Nullable Double clampH,
        String remark,
        String hand,
        Instant at,
        Instant writtenAt) {

    Gluing takenOut(Instant now) {
        return replaced(true, now);
    }

    Gluing broughtBack(Instant now) {
        return replaced(false, now);
    }

    private Gluing replaced(boolean out, Instant now) {
        return new Gluing(
                0,
                id,
                out,
                batchId,
                visitId,
                joint,
                usedG,
                partC,
                temperatureC,
                humidityPct,
                airFrom,
                clampH,
                remark,
                hand,
                at,
                now);
    }

    /** When the clamps may come off, by the hours that were written; null without them. */
    @Nullable
    Instant clampedUntil() {
        return clampH == null ? null : at.plus(Duration.ofMinutes(Math.round(clampH * 60)));
    }
}
