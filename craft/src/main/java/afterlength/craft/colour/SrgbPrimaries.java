package afterlength.craft.colour;

/**
 * The step between linear sRGB and XYZ, worked out from the chromaticities of the three lamps and of the white instead of from a
 * rounded table. Source: docs/sources.md#srgb.
 */
final class SrgbPrimaries {
    private static final double[][] TO_XYZ = toXyz();
    private static final double[][] FROM_XYZ = ThreeByThree.inverse(TO_XYZ);

    private SrgbPrimaries() {}

    static Xyz xyz(double red, double green, double blue) {
        double[] xyz = times(TO_XYZ, red, green, blue);
        return new Xyz(xyz[0], xyz[1], xyz[2]);
    }

    static double[] linear(Xyz colour) {
        return times(FROM_XYZ, colour.x(), colour.y(), colour.z());
    }

    private static double[][] toXyz() {
        double[][] lamps = columns(lamp(0.64, 0.33), lamp(0.30, 0.60), lamp(0.15, 0.06));
        Xyz white = Xyz.SRGB_WHITE;
        double[] strength = times(ThreeByThree.inverse(lamps), white.x(), white.y(), white.z());
        for (double[] row : lamps) {
            for (int lamp = 0; lamp < 3; lamp++) {
                row[lamp] *= strength[lamp];
            }
        }
        return lamps;
    }

    private static double[] lamp(double x, double y) {
        return new double[] {x / y, 1, (1 - x - y) / y};
    }

    private static double[][] columns(double[] first, double[] second, double[] third) {
        double[][] rows = new double[3][];
        for (int row = 0; row < 3; row++) {
            rows[row] = new double[] {first[row], second[row], third[row]};
        }
        return rows;
    }

    private static double[] times(double[][] rows, double first, double second, double third) {
        double[] product = new double[3];
        for (int row = 0; row < 3; row++) {
            product[row] = rows[row][0] * first + rows[row][1] * second + rows[row][2] * third;
        }
        return product;
    }
}
