package afterlength.workshop.retouch;

import java.util.Arrays;
import java.util.List;

/**
 * Shares of a mixture in whole drops: the smallest number of drops in which every share comes out within {@value #NEAR} of itself,
 * as amounts off by that much are usual anyway, or the nearest to it in at most {@value #MOST}. Drops of thicker and thinner
 * mixtures differ in size; weighing is better.
 */
final class Drops {
    static final double NEAR = 0.05;
    static final int MOST = 60;

    private Drops() {}

    /** @param shares above nothing, adding up to 1 */
    static List<Integer> of(List<Double> shares) {
        double[] parts = shares.stream().mapToDouble(Double::doubleValue).toArray();
        int[] best = rounded(parts, MOST);
        for (int total = parts.length; total <= MOST; total++) {
            int[] drops = rounded(parts, total);
            if (off(parts, drops) <= NEAR) {
                best = drops;
                break;
            }
        }
        return Arrays.stream(best).boxed().toList();
    }

    private static int[] rounded(double[] parts, int total) {
        return Arrays.stream(parts)
                .mapToInt(part -> Math.max(1, (int) Math.round(part * total)))
                .toArray();
    }

    private static double off(double[] parts, int[] drops) {
        double all = Arrays.stream(drops).sum();
        double worst = 0;
        for (int n = 0; n < parts.length; n++) {
            worst = Math.max(worst, Math.abs(drops[n] / all / parts[n] - 1));
        }
        return worst;
    }
}
