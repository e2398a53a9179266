package afterlength.craft.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * How long several steps take together. Their times are simulated, not added: the sum of usual times lies below what half of
 * all jobs need, because a step can run over by more than it can run under ({@code docs/sources.md#shop-times}).
 *
 * <p>In each of {@link #RUNS} runs every step draws from its triangle, and {@link CommonPace} multiplies their sum. The draws
 * are seeded, so the same steps give the same answer on every machine. Two estimates joined by {@link #and} are joined run by
 * run: more work never yields a lower end. The expected time is the closed form, the sum of the means, and adds exactly.
 *
 * <p>Left out: damage found only after opening, and waiting for glue or varnish. With 10 000 runs an end of the range carries a
 * sampling error of about a third of a per cent, far below that of the figures put in.
 */
public final class WorkEstimate {
    public static final int RUNS = 10_000;

    /** No work at all. */
    public static final WorkEstimate NOTHING = new WorkEstimate(new double[RUNS], 0);

    private final double[] sums_min;
    private final double expected_min;
    /** Sorted once, however many shares are asked for; made when first asked for. */
    private double @Nullable [] paced_min;

    private WorkEstimate(double[] sums_min, double expected_min) {
        this.sums_min = sums_min;
        this.expected_min = expected_min;
    }

    /**
     * The steps of one line of a proposal.
     *
     * @param seed a number of the line's own, so that its draws do not depend on its neighbours
     */
    public static WorkEstimate of(long seed, List<HandsOn> steps) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] sums_min = new double[RUNS];
        for (HandsOn step : steps) {
            for (int run = 0; run < RUNS; run++) {
                sums_min[run] += step.at(random.nextDouble());
            }
        }
        return new WorkEstimate(
                sums_min, steps.stream().mapToDouble(HandsOn::mean_min).sum());
    }

    public WorkEstimate and(WorkEstimate other) {
        double[] both_min = new double[RUNS];
        Arrays.setAll(both_min, run -> sums_min[run] + other.sums_min[run]);
        return new WorkEstimate(both_min, expected_min + other.expected_min);
    }

    public double expected_min() {
        return expected_min;
    }

    /**
     * The time that this share of all runs stays below, with the common pace.
     *
     * @param share above 0, at most 1
     */
    public double point_min(double share) {
        return point(paced_min(), share);
    }

    private synchronized double[] paced_min() {
        double[] known = paced_min;
        if (known == null) {
            known = new double[RUNS];
            for (int run = 0; run < RUNS; run++) {
                known[run] = sums_min[run] * CommonPace.in(run);
            }
            Arrays.sort(known);
            paced_min = known;
        }
        return known;
    }

    /** The same without the common pace, which closed forms describe. */
    double unpacedPoint_min(double share) {
        double[] sorted_min = unpaced_min();
        Arrays.sort(sorted_min);
        return point(sorted_min, share);
    }

    double[] unpaced_min() {
        return sums_min.clone();
    }

    private static double point(double[] sorted_min, double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("the share of runs is " + share + "; allowed is above 0, at most 1");
        }
        return sorted_min[(int) Math.ceil(share * RUNS) - 1];
    }
}
