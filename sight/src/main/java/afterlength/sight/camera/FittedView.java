package afterlength.sight.camera;

import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.RealMatrix;

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
