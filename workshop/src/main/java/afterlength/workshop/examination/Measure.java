package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;
import java.time.Instant;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A measured value with all that makes it worth something: unit, ±, method, air, time and hand.
 *
 * @param quantity the key of a {@link Quantity}, or the shop's own words
 * @param plusMinus how far the value may be off, in its unit; more than nothing
 * @param hand who measured
 * @param writtenAt when this wording was written; a correction is written later than it was measured
 */
public record Measure(
        long id,
        long visitId,
        @Nullable Long replaces,
        boolean withdrawn,
        Moment moment,
        String quantity,
        double value,
        String unit,
        double plusMinus,
        String method,
        @Nullable Double temperatureC,
        @Nullable Double humidityPct,
        Instant takenAt,
        String hand,
        Instant writtenAt)
        implements Written {
    public Measure {
        if (!(plusMinus > 0)) {
            throw new IllegalArgumentException("the measure of " + quantity + " has no ±");
        }
    }

    public Air air() {
        return new Air(temperatureC, humidityPct);
    }

    /** What was measured, in words. */
    public String title() {
        return Quantity.findByKey(quantity).map(Quantity::words).orElse(quantity);
    }

    /** "27.0 ± 0.2 mm". */
    public String figure() {
        return Figures.plusMinus(value, plusMinus, unit);
    }

    /** Two measures can be compared when this agrees. */
    String kind() {
        return quantity.toLowerCase(Locale.ROOT) + " in " + unit;
    }

    /** What is said, without when it was written. */
    Measure words() {
        return again(0, false, Instant.EPOCH);
    }

    /** The same measure as a new entry that replaces an earlier one. */
    Measure again(long replaced, boolean nowWithdrawn, Instant at) {
        return new Measure(
                0,
                visitId,
                replaced,
                nowWithdrawn,
                moment,
                quantity,
                value,
                unit,
                plusMinus,
                method,
                temperatureC,
                humidityPct,
                takenAt,
                hand,
                at);
    }
}
