package afterlength.sight.camera;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The least sum of squares of what is left over, by Levenberg's and Marquardt's damped steps with numerical slopes. For a few
 * dozen unknowns; every leftover is to be given in its own standard deviation, so that the inverse of the normal equations is
 * the covariance of the unknowns.
 */
final class LeastSquares {
    private static final int MOST_ROUNDS = 60;
    private static final double SMALLEST_GAIN = 1e-10;
    private static final double MOST_DAMPING = 1e12;

    private final UnaryOperator<double[]> leftovers;
    private final double[] steps;

    /**
     * @param leftovers what is left over at these unknowns
     * @param steps for the slope along each unknown: far above rounding, far below any bend
     */
    LeastSquares(UnaryOperator<double[]> leftovers, double[] steps) {
        this.leftovers = leftovers;
        this.steps = steps;
    }

    double[] solve(double[] from) {
        double[] best = from;
        double damping = 1e-3;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] here = leftovers.apply(best);
            double cost = squares(here);
            Slopes slopes = slopes(best, here);
            double[] tried = slopes.step(best, damping);
            while (!(squares(leftovers.apply(tried)) <= cost)) {
                damping *= 10;
                if (damping > MOST_DAMPING) {
                    return best;
                }
                tried = slopes.step(best, damping);
            }
            damping /= 10;
            best = tried;
            if (cost - squares(leftovers.apply(best)) <= SMALLEST_GAIN * cost) {
                return best;
            }
        }
        return best;
    }

    RealMatrix covariance(double[] at) {
        return solver(slopes(at, leftovers.apply(at)).normal).getInverse();
    }

    private Slopes slopes(double[] at, double[] here) {
        RealMatrix slopes = MatrixUtils.createRealMatrix(here.length, at.length);
        for (int n = 0; n < at.length; n++) {
            double[] beside = at.clone();
            beside[n] += steps[n];
            double[] there = leftovers.apply(beside);
            for (int row = 0; row < here.length; row++) {
                slopes.setEntry(row, n, (there[row] - here[row]) / steps[n]);
            }
        }
        return new Slopes(slopes.transposeMultiply(slopes), slopes.transpose().operate(here));
    }

    /** The normal equations at one place: how steep, and which way down. */
    private record Slopes(
            RealMatrix normal,
            @SuppressWarnings("ArrayRecordComponent") double[] uphill) {
        double[] step(double[] from, double damping) {
            RealMatrix damped = normal.copy();
            for (int n = 0; n < from.length; n++) {
                damped.multiplyEntry(n, n, 1 + damping);
            }
            double[] down =
                    solver(damped).solve(MatrixUtils.createRealVector(uphill)).toArray();
            double[] to = from.clone();
            Arrays.setAll(to, n -> from[n] - down[n]);
            return to;
        }
    }

    private static DecompositionSolver solver(RealMatrix normal) {
        return new CholeskyDecomposition(normal, 1e-6, 0).getSolver();
    }

    private static double squares(double[] leftovers) {
        double sum = 0;
        for (double one : leftovers) {
            sum += one * one;
        }
        return sum;
    }
}
