package afterlength.craft.estimate;

/**
 * Hands-on time of one step, spread as a triangle: never under {@code low_min}, most often {@code typical_min}, never over
 * {@code high_min}.
 *
 * <p>Mean {@code (a + b + c) / 3}, variance {@code (a² + b² + c² − ab − ac − bc) / 18}, as in any handbook of statistics. A
 * triangle is the plainest shape that three remembered figures support; real times have a longer tail, which is one reason why
 * {@link WorkEstimate} adds a pace common to all steps.
 */
public record HandsOn(double low_min, double typical_min, double high_min) {
    public HandsOn {
        if (!(0 <= low_min && low_min <= typical_min && typical_min <= high_min && high_min < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("hands-on time is " + low_min + " / " + typical_min + " / " + high_min
                    + " min; allowed is least ≤ usual ≤ most, none below 0");
        }
    }

    public double mean_min() {
        return (low_min + typical_min + high_min) / 3;
    }

    double variance_min2() {
        double squares = low_min * low_min + typical_min * typical_min + high_min * high_min;
        double products = low_min * typical_min + low_min * high_min + typical_min * high_min;
        return (squares - products) / 18;
    }

    /** The time that this share of all cases stays below. */
    double at(double share) {
        double width_min = high_min - low_min;
        if (width_min == 0) {
            return low_min;
        }
        double rising_min = typical_min - low_min;
        return share * width_min < rising_min
                ? low_min + Math.sqrt(share * width_min * rising_min)
                : high_min - Math.sqrt((1 - share) * width_min * (high_min - typical_min));
    }
}
