package afterlength.craft.estimate;

import java.util.SplittableRandom;

/**
 * An instrument is slow or quick as a whole: one factor on all its steps, drawn once a run. Log-normal, spread 20 %
 * ({@code docs/sources.md#shop-times}).
 *
 * <p>The source gives no middle for the factor. We set its mean to 1, so that it widens the range and leaves the expected time
 * where the steps put it: with {@code s² = ln(1 + 0.20²)} the factor is {@code exp(s·z − s²/2)}, z standard normal (polar
 * method of Marsaglia, in strict arithmetic so that every machine draws the same).
 */
final class CommonPace {
    static final double SPREAD = 0.20;

    private static final long SEED = 1905;
    private static final double[] FACTORS = draw();

    private CommonPace() {}

    static double in(int run) {
        return FACTORS[run];
    }

    private static double[] draw() {
        double s = StrictMath.sqrt(StrictMath.log(1 + SPREAD * SPREAD));
        SplittableRandom random = new SplittableRandom(SEED);
        double[] factors = new double[WorkEstimate.RUNS];
        for (int run = 0; run < factors.length; run++) {
            factors[run] = StrictMath.exp(s * normal(random) - s * s / 2);
        }
        return factors;
    }

    private static double normal(SplittableRandom random) {
        while (true) {
            double x = 2 * random.nextDouble() - 1;
            double y = 2 * random.nextDouble() - 1;
            double square = x * x + y * y;
            if (square > 0 && square < 1) {
                return x * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
            }
        }
    }
}
