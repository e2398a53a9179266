package afterlength.craft.colour;

import java.util.Arrays;

/**
 * One choice of colorants, brought as near to the target as amounts allow: damped least squares (Levenberg, Marquardt) on the six
 * weighted parts of the two colour differences. Amounts do not go below nothing; a film above its cap counts as a seventh part.
 * Amounts are counted in units of equal strength, so that it does not matter whether the palette speaks of coats or micrometres.
 */
final class RecipeTrial {
    private static final int STEPS_AT_MOST = 30;
    private static final double START = 0.3;

    /** Amounts change this far to read a slope; well above the noise of rounding, well below a visible change. */
    private static final double NUDGE = 1e-6;

    /** A film above its cap by a hundredth weighs like a difference of one. */
    private static final double CAP_WEIGHT = 100;

    private static final double SETTLED = 1e-6;

    private final RecipeTarget target;
    private final int[] which;
    private final double[] units;
    private final double cap;
    private final double[] reflectances;
    private double[] counts;
    private double[] parts;
    private double square;

    private RecipeTrial(RecipeTarget target, int[] which, double[] unitOf, double cap) {
        this.target = target;
        this.which = which;
        this.cap = cap;
        units = Arrays.stream(which).mapToDouble(one -> unitOf[one]).toArray();
        reflectances = new double[target.wavelengths()];
        counts = new double[which.length];
        Arrays.fill(counts, START / which.length);
        parts = look(counts);
        square = sumOfSquares(parts);
    }

    /**
     * @param which places of the colorants in the palette
     * @param unitOf of each colorant of the palette, the amount that counts as one
     * @param cap the most that the amounts may add up to
     */
    static RecipeTrial run(RecipeTarget target, int[] which, double[] unitOf, double cap) {
        RecipeTrial trial = new RecipeTrial(target, which, unitOf, cap);
        trial.settle();
        return trial;
    }

    int[] which() {
        return which;
    }

    /** Amounts in the unit of the palette; their sum does not pass the cap. */
    double[] amounts() {
        double[] amounts = amounts(counts);
        double sum = Arrays.stream(amounts).sum();
        return sum <= cap
                ? amounts
                : Arrays.stream(amounts).map(amount -> amount * cap / sum).toArray();
    }

    private void settle() {
        double damping = 1e-3;
        for (int step = 0; step < STEPS_AT_MOST && damping < 1e6; step++) {
            double[] tried = add(counts, step(slopes(), damping));
            double[] seen = look(tried);
            double better = sumOfSquares(seen);
            if (better >= square) {
                damping *= 10;
                continue;
            }
            boolean settled = square - better < SETTLED * (square + SETTLED);
            counts = tried;
            parts = seen;
            square = better;
            damping = Math.max(1e-9, damping / 10);
            if (settled) {
                return;
            }
        }
    }

    private double[][] slopes() {
        double[][] slopes = new double[which.length][];
        for (int n = 0; n < which.length; n++) {
            double[] nudged = counts.clone();
            nudged[n] += NUDGE;
            slopes[n] = look(nudged);
            for (int part = 0; part < parts.length; part++) {
                slopes[n][part] = (slopes[n][part] - parts[part]) / NUDGE;
            }
        }
        return slopes;
    }

    private double[] step(double[][] slopes, double damping) {
        int size = which.length;
        double[][] normal = new double[size][size + 1];
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < size; column++) {
                normal[row][column] = dot(slopes[row], slopes[column]);
            }
            normal[row][size] = -dot(slopes[row], parts);
            normal[row][row] = normal[row][row] * (1 + damping) + 1e-12;
        }
        holdAtNothing(normal);
        return SmallSystem.solve(normal);
    }

    /** A colorant that is at nothing and would go below stays there, so that the others can move as if it were not chosen. */
    private void holdAtNothing(double[][] normal) {
        int size = which.length;
        for (int n = 0; n < size; n++) {
            if (counts[n] <= 0 && normal[n][size] < 0) {
                for (int other = 0; other < size; other++) {
                    normal[n][other] = 0;
                    normal[other][n] = 0;
                }
                normal[n][n] = 1;
                normal[n][size] = 0;
            }
        }
    }

    private double[] look(double[] counts) {
        double[] seen = new double[RecipeTarget.PARTS + 1];
        double[] amounts = amounts(counts);
        target.look(which, amounts, reflectances, seen);
        double over = Arrays.stream(amounts).sum() / cap - 1;
        seen[RecipeTarget.PARTS] = over > 0 ? CAP_WEIGHT * over : 0;
        return seen;
    }

    private double[] amounts(double[] counts) {
        double[] amounts = new double[counts.length];
        for (int n = 0; n < counts.length; n++) {
            amounts[n] = counts[n] * units[n];
        }
        return amounts;
    }

    private static double[] add(double[] counts, double[] step) {
        double[] sum = new double[counts.length];
        for (int n = 0; n < counts.length; n++) {
            sum[n] = Math.max(0, counts[n] + step[n]);
        }
        return sum;
    }

    private static double dot(double[] first, double[] second) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += first[i] * second[i];
        }
        return sum;
    }

    private static double sumOfSquares(double[] parts) {
        return dot(parts, parts);
    }
}
