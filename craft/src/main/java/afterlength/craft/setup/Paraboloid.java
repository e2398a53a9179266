package afterlength.craft.setup;

import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * {@code z = a + b·x + c·y + d·x² + e·y² + f·x·y}, laid through points as closely as can be (least squares, by singular values).
 * With five points, or all on the two axes, the twist f is taken as none.
 *
 * @param heightSpread by how much a in millimetres is off for each millimetre of independent error of every height
 * @param slopeSpread the same for the worse of b and c, per millimetre
 */
record Paraboloid(double a, double b, double c, double d, double e, double f, double heightSpread, double slopeSpread) {
    private static final int TERMS_WITHOUT_TWIST = 5;

    /** Empty when the points do not fix a surface: fewer than five, or too nearly in line. */
    static Optional<Paraboloid> find(List<PlateHeight> points) {
        boolean twist = points.size() > TERMS_WITHOUT_TWIST
                && points.stream().anyMatch(point -> Math.abs(point.along_mm() * point.across_mm()) > 1e-9);
        if (points.size() < TERMS_WITHOUT_TWIST) {
            return Optional.empty();
        }
        double scale_mm = points.stream()
                .mapToDouble(point -> Math.hypot(point.along_mm(), point.across_mm()))
                .max()
                .orElseThrow();
        return twist
                ? solve(points, scale_mm, TERMS_WITHOUT_TWIST + 1)
                        .or(() -> solve(points, scale_mm, TERMS_WITHOUT_TWIST))
                : solve(points, scale_mm, TERMS_WITHOUT_TWIST);
    }

    private static Optional<Paraboloid> solve(List<PlateHeight> points, double scale_mm, int terms) {
        double[][] rows = new double[points.size()][];
        double[] heights_mm = new double[points.size()];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = row(points.get(i).along_mm() / scale_mm, points.get(i).across_mm() / scale_mm, terms);
            heights_mm[i] = points.get(i).height_mm();
        }
        SingularValueDecomposition values = new SingularValueDecomposition(MatrixUtils.createRealMatrix(rows));
        if (!(values.getInverseConditionNumber() > 1e-6)) {
            return Optional.empty();
        }
        RealMatrix inverse = values.getSolver().getInverse();
        return Optional.of(scaled(inverse.operate(heights_mm), inverse, scale_mm));
    }

    private static double[] row(double x, double y, int terms) {
        return terms == TERMS_WITHOUT_TWIST
                ? new double[] {1, x, y, x * x, y * y}
                : new double[] {1, x, y, x * x, y * y, x * y};
    }

    private static Paraboloid scaled(double[] k, RealMatrix inverse, double scale_mm) {
        double square = scale_mm * scale_mm;
        double twist = k.length > TERMS_WITHOUT_TWIST ? k[TERMS_WITHOUT_TWIST] : 0;
        double slopeSpread = Math.max(
                inverse.getRowVector(1).getNorm(), inverse.getRowVector(2).getNorm());
        return new Paraboloid(
                k[0],
                k[1] / scale_mm,
                k[2] / scale_mm,
                k[3] / square,
                k[4] / square,
                twist / square,
                inverse.getRowVector(0).getNorm(),
                slopeSpread / scale_mm);
    }

    double height_mm(double x_mm, double y_mm) {
        return a + b * x_mm + c * y_mm + d * x_mm * x_mm + e * y_mm * y_mm + f * x_mm * y_mm;
    }

    double slopeAlong(double x_mm, double y_mm) {
        return b + 2 * d * x_mm + f * y_mm;
    }

    double slopeAcross(double x_mm, double y_mm) {
        return c + 2 * e * y_mm + f * x_mm;
    }
}
