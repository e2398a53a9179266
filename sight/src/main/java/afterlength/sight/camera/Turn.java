package afterlength.sight.camera;

/** A rotation in space, kept as its matrix. */
public final class Turn {
    private final double[][] rows;

    private Turn(double[][] rows) {
        this.rows = rows;
    }

    /** By an angle of as many radians as the vector is long, around the vector (Rodrigues' formula). */
    public static Turn around(double x, double y, double z) {
        double angle = Math.sqrt(x * x + y * y + z * z);
        double sine = angle < 1e-12 ? 1 : Math.sin(angle) / angle;
        double rest = angle < 1e-12 ? 0.5 : (1 - Math.cos(angle)) / (angle * angle);
        return new Turn(new double[][] {
            {1 - rest * (y * y + z * z), rest * x * y - sine * z, rest * x * z + sine * y},
            {rest * x * y + sine * z, 1 - rest * (x * x + z * z), rest * y * z - sine * x},
            {rest * x * z - sine * y, rest * y * z + sine * x, 1 - rest * (x * x + y * y)}
        });
    }

    /**
     * The rotation whose first two columns come nearest to these; they are nearly of length one and nearly square to each
     * other, as a measured pose has them.
     */
    static Turn ofColumns(double[] first, double[] second) {
        double[] one = scaled(first, 1 / length(first));
        double along = one[0] * second[0] + one[1] * second[1] + one[2] * second[2];
        double[] across = {second[0] - along * one[0], second[1] - along * one[1], second[2] - along * one[2]};
        double[] two = scaled(across, 1 / length(across));
        double[] three = {
            one[1] * two[2] - one[2] * two[1], one[2] * two[0] - one[0] * two[2], one[0] * two[1] - one[1] * two[0]
        };
        return new Turn(
                new double[][] {{one[0], two[0], three[0]}, {one[1], two[1], three[1]}, {one[2], two[2], three[2]}});
    }

    /** This after the other. */
    public Turn after(Turn first) {
        double[][] product = new double[3][3];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                for (int n = 0; n < 3; n++) {
                    product[row][column] += rows[row][n] * first.rows[n][column];
                }
            }
        }
        return new Turn(product);
    }

    /** A vector after the turn. */
    public double[] applied(double x, double y, double z) {
        return new double[] {
            rows[0][0] * x + rows[0][1] * y + rows[0][2] * z,
            rows[1][0] * x + rows[1][1] * y + rows[1][2] * z,
            rows[2][0] * x + rows[2][1] * y + rows[2][2] * z
        };
    }

    double[] undone(double x, double y, double z) {
        return new double[] {
            rows[0][0] * x + rows[1][0] * y + rows[2][0] * z,
            rows[0][1] * x + rows[1][1] * y + rows[2][1] * z,
            rows[0][2] * x + rows[1][2] * y + rows[2][2] * z
        };
    }

    private static double length(double[] vector) {
        return Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
    }

    private static double[] scaled(double[] vector, double factor) {
        return new double[] {vector[0] * factor, vector[1] * factor, vector[2] * factor};
    }
}
