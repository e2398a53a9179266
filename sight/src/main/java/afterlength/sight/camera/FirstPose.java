package afterlength.sight.camera;

import java.util.List;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * A first pose from the plane's homography with the guessed lens: the homography's columns, freed of the lens, are two axes of
 * the turn and the shift, up to one scale. It only has to be near enough for {@link ViewFit} to walk from.
 */
final class FirstPose {
    private final List<Sighting> sightings;
    private final LensGuess guess;

    private FirstPose(List<Sighting> sightings, LensGuess guess) {
        this.sightings = sightings;
        this.guess = guess;
    }

    static ViewParameters of(List<Sighting> sightings, LensGuess guess) {
        return new FirstPose(sightings, guess).parameters();
    }

    private ViewParameters parameters() {
        double[] h = homography();
        double size = Math.sqrt(norm(h[0], h[3], h[6]) * norm(h[1], h[4], h[7]));
        double scale = (h[8] > 0 ? 1 : -1) / size;
        double[] first = {h[0] * scale, h[3] * scale, h[6] * scale};
        double[] second = {h[1] * scale, h[4] * scale, h[7] * scale};
        double middleX_mm = meanX_mm();
        double middleY_mm = meanY_mm();
        Turn turn = Turn.ofColumns(first, second);
        double[] back = turn.applied(middleX_mm, middleY_mm, 0);
        return new ViewParameters(
                turn,
                guess.logFocal().value(),
                guess.k1().value(),
                guess.centreX_px().value(),
                guess.centreY_px().value(),
                0,
                0,
                0,
                h[2] * scale - back[0],
                h[5] * scale - back[1],
                h[8] * scale - back[2]);
    }

    /** From places around their middle to straight rays: the direction that the normal equations weigh least. */
    private double[] homography() {
        RealMatrix normal = MatrixUtils.createRealMatrix(9, 9);
        double scale_mm = spread_mm();
        for (Sighting sighting : sightings) {
            double x = (sighting.place().x_mm() - meanX_mm()) / scale_mm;
            double y = (sighting.place().y_mm() - meanY_mm()) / scale_mm;
            double u = (sighting.seen().x() - guess.centreX_px().value()) / guess.focal_px();
            double v = (sighting.seen().y() - guess.centreY_px().value()) / guess.focal_px();
            add(normal, new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y, -u});
            add(normal, new double[] {0, 0, 0, x, y, 1, -v * x, -v * y, -v});
        }
        double[] h = new EigenDecompositionSymmetric(normal).getEigenvector(8).toArray();
        for (int row = 0; row < 3; row++) {
            h[3 * row] /= scale_mm;
            h[3 * row + 1] /= scale_mm;
        }
        return h;
    }

    private static void add(RealMatrix normal, double[] row) {
        for (int n = 0; n < row.length; n++) {
            for (int m = 0; m < row.length; m++) {
                normal.addToEntry(n, m, row[n] * row[m]);
            }
        }
    }

    private double meanX_mm() {
        return sightings.stream()
                .mapToDouble(one -> one.place().x_mm())
                .average()
                .orElse(0);
    }

    private double meanY_mm() {
        return sightings.stream()
                .mapToDouble(one -> one.place().y_mm())
                .average()
                .orElse(0);
    }

    private double spread_mm() {
        double x = meanX_mm();
        double y = meanY_mm();
        return sightings.stream()
                .mapToDouble(
                        one -> Math.hypot(one.place().x_mm() - x, one.place().y_mm() - y))
                .max()
                .orElse(1);
    }

    private static double norm(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }
}
