package afterlength.bench;

import java.util.Arrays;
import java.util.function.DoubleSupplier;

/**
 * How long one job takes, call by call: what half of the calls keep within, and nineteen of twenty. Every result is looked at, so
 * that no compiler can leave the work out.
 */
record Times(double median_ms, double slow_ms) {
    private static final double NANOSECONDS_PER_MS = 1e6;

    static Times of(DoubleSupplier job, int warmUps, int calls) {
        for (int i = 0; i < warmUps; i++) {
            once_ms(job);
        }
        double[] each_ms = new double[calls];
        for (int i = 0; i < calls; i++) {
            each_ms[i] = once_ms(job);
        }
        Arrays.sort(each_ms);
        return new Times(each_ms[calls / 2], each_ms[(int) (0.95 * calls)]);
    }

    static double once_ms(DoubleSupplier job) {
        long begin = System.nanoTime();
        double answer = job.getAsDouble();
        long end = System.nanoTime();
        if (Double.isNaN(answer)) {
            throw new IllegalStateException("a job without an answer was measured");
        }
        return (end - begin) / NANOSECONDS_PER_MS;
    }
}
