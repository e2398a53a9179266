package afterlength.sight.camera;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** A view solved from a picture, and how well it is known. */
public final class FittedView {
    private final ViewParameters parameters;
    private final RealMatrix covariance;
    private final double residual_px;
    private final int corners;

    FittedView(ViewParameters parameters, RealMatrix covariance, double residual_px, int corners) {
        this.parameters = parameters;
        this.covariance = covariance;
        this.residual_px = residual_px;
        this.corners = corners;
    }

    ViewParameters parameters() {
        return parameters;
    }

    public View view() {
        return parameters.view();
    }

    /** Root of the mean square of the distances between corners seen and corners expected. */
    public double residual_px() {
        return residual_px;
    }

    public int corners() {
        return corners;
    }

    /** Share by which the focal length may be off, one standard deviation. */
    public double focalDeviation() {
        return Math.sqrt(covariance.getEntry(0, 0));
    }

    /**
     * How far the lens solved here lies from another one, in the joint deviations of both (the distance of Mahalanobis): its
     * square is distributed as chi-square with four degrees of freedom when both are the same lens.
     *
     * @param moved the same picture, solved with something else that is uncertain moved by its deviation
     */
    public double distance(LensGuess other, FittedView moved) {
        int last = ViewParameters.OF_LENS - 1;
        RealMatrix joint = covariance.getSubMatrix(0, last, 0, last).copy();
        double[] solved = parameters.ofLens();
        RealVector shift =
                MatrixUtils.createRealVector(moved.parameters.ofLens()).subtract(MatrixUtils.createRealVector(solved));
        RealVector apart = MatrixUtils.createRealVector(new double[solved.length]);
        for (int n = 0; n < solved.length; n++) {
            Guess guess = other.get(n);
            joint.addToEntry(n, n, guess.deviation() * guess.deviation());
            apart.setEntry(n, solved[n] - guess.value());
        }
        RealMatrix whole = joint.add(shift.outerProduct(shift));
        RealVector weighed =
                new CholeskyDecomposition(whole, 1e-6, 0).getSolver().solve(apart);
        return Math.sqrt(apart.dotProduct(weighed));
    }

    /**
     * Standard deviation of anything reckoned from the view, because the view is not known exactly: its slope along each of the
     * ten parameters, laid on their covariance.
     */
    public double deviation(ToDoubleFunction<View> quantity) {
        double[] slope = new double[ViewParameters.COUNT];
        for (int n = 0; n < ViewParameters.COUNT; n++) {
            double step = ViewParameters.step(n);
            double up = quantity.applyAsDouble(parameters.movedView(n, step));
            double down = quantity.applyAsDouble(parameters.movedView(n, -step));
            slope[n] = (up - down) / (2 * step);
        }
        double variance = 0;
        for (int row = 0; row < slope.length; row++) {
            for (int column = 0; column < slope.length; column++) {
                variance += slope[row] * covariance.getEntry(row, column) * slope[column];
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }
}
