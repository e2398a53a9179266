package afterlength.craft.varnish;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How long the next coat of a recipe takes to be dry to the touch, from the shop's own coats: their middle, and as spread the quarter
 * and three-quarter points, or the shortest and the longest while there are fewer than eight. No formula for temperature or humidity
 * was found for varnish, so air outside the recorded is said and not corrected for.
 */
public sealed interface DryingEstimate {
    /** Fewer coats than this tell nothing about a spread. */
    int FEWEST = 3;

    /** From this many coats on the middle half is a spread. */
    int ENOUGH_FOR_QUARTERS = 8;

    /** The shop's own figure. */
    record Own(double low_h, double typical_h, double high_h, int coats, boolean airIsNew) implements DryingEstimate {}

    /** Too few coats are recorded; the practice times hold until then. */
    record TooFew(int coats) implements DryingEstimate {}

    static DryingEstimate of(List<CoatRecord> coats, double temperature_C, double humidity_pct) {
        if (coats.size() < FEWEST) {
            return new TooFew(coats.size());
        }
        double[] hours = sorted(coats, CoatRecord::touchDry_h);
        boolean many = hours.length >= ENOUGH_FOR_QUARTERS;
        return new Own(
                many ? at(hours, 0.25) : hours[0],
                at(hours, 0.5),
                many ? at(hours, 0.75) : hours[hours.length - 1],
                hours.length,
                outside(sorted(coats, CoatRecord::temperature_C), temperature_C)
                        || outside(sorted(coats, CoatRecord::humidity_pct), humidity_pct));
    }

    private static double[] sorted(List<CoatRecord> coats, ToDoubleFunction<CoatRecord> quantity) {
        return coats.stream().mapToDouble(quantity).sorted().toArray();
    }

    /** Straight between the two neighbours of a part of the way through. */
    private static double at(double[] sorted, double part) {
        double place = part * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static boolean outside(double[] sorted, double value) {
        return Arrays.stream(sorted).noneMatch(seen -> seen <= value)
                || Arrays.stream(sorted).noneMatch(seen -> seen >= value);
    }
}
