package afterlength.craft.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An arched plate that is no paraboloid: cosines along and across with a flat edge channel to them. Its inside is not computed but
 * found, by walking over the outside in small steps, going one thickness in along the normal, and seeing what comes out on the
 * axis of the post.
 */
final class PlateModel {
    private static final double FINE_mm = 1e-4;

    private final double rise_mm;
    private final double edge_mm;
    private final double length_mm;
    private final double width_mm;
    private final double postAlong_mm;
    private final double postAcross_mm;
    private final double thickness_mm;

    PlateModel(SplittableRandom random) {
        rise_mm = random.nextDouble(8, 15);
        edge_mm = random.nextDouble(3, 5);
        length_mm = random.nextDouble(340, 380);
        width_mm = random.nextDouble(115, 170);
        postAlong_mm = random.nextDouble(0, 25);
        postAcross_mm = random.nextDouble(14, 24);
        thickness_mm = random.nextDouble(2.2, 5);
    }

    double thickness_mm() {
        return thickness_mm;
    }

    /** From the axis of the post. */
    double outside_mm(double along_mm, double across_mm) {
        double x = Math.PI * (along_mm + postAlong_mm) / length_mm;
        double y = Math.PI * (across_mm + postAcross_mm) / width_mm;
        return edge_mm + rise_mm * Math.cos(x) * (0.5 + 0.5 * Math.cos(2 * y));
    }

    List<PlateHeight> cross(double reach_mm) {
        List<PlateHeight> points = new ArrayList<>();
        for (double[] at : new double[][] {{0, 0}, {reach_mm, 0}, {-reach_mm, 0}, {0, reach_mm}, {0, -reach_mm}}) {
            points.add(new PlateHeight(at[0], at[1], outside_mm(at[0], at[1])));
        }
        return points;
    }

    /** Height of the inside over one point. */
    double inside_mm(double along_mm, double across_mm) {
        double x_mm = along_mm;
        double y_mm = across_mm;
        // walk the point on the outside until its normal, one thickness long, ends on the line asked for
        for (int i = 0; i < 60; i++) {
            double[] end = oneThicknessIn(x_mm, y_mm);
            x_mm += along_mm - end[0];
            y_mm += across_mm - end[1];
        }
        return oneThicknessIn(x_mm, y_mm)[2];
    }

    private double[] oneThicknessIn(double x_mm, double y_mm) {
        double along = (outside_mm(x_mm + FINE_mm, y_mm) - outside_mm(x_mm - FINE_mm, y_mm)) / (2 * FINE_mm);
        double across = (outside_mm(x_mm, y_mm + FINE_mm) - outside_mm(x_mm, y_mm - FINE_mm)) / (2 * FINE_mm);
        double steep = Math.sqrt(1 + along * along + across * across);
        return new double[] {
            x_mm + thickness_mm * along / steep,
            y_mm + thickness_mm * across / steep,
            outside_mm(x_mm, y_mm) - thickness_mm / steep
        };
    }

    double insideSlopeAlong_deg() {
        return Math.toDegrees(Math.atan((inside_mm(0.01, 0) - inside_mm(-0.01, 0)) / 0.02));
    }

    double insideSlopeAcross_deg() {
        return Math.toDegrees(Math.atan((inside_mm(0, 0.01) - inside_mm(0, -0.01)) / 0.02));
    }

    double outsideSlopeAlong_deg() {
        return Math.toDegrees(Math.atan((outside_mm(0.01, 0) - outside_mm(-0.01, 0)) / 0.02));
    }

    double outsideSlopeAcross_deg() {
        return Math.toDegrees(Math.atan((outside_mm(0, 0.01) - outside_mm(0, -0.01)) / 0.02));
    }
}
