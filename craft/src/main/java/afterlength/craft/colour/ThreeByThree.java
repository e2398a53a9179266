package afterlength.craft.colour;

/** The way back from a mixture of three signals. */
final class ThreeByThree {
    private ThreeByThree() {}

    /** By cofactors: three by three is small enough to be exact to the last digits. */
    static double[][] inverse(double[][] m) {
        double[][] inverse = new double[3][3];
        double determinant = 0;
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                inverse[column][row] = m[(row + 1) % 3][(column + 1) % 3] * m[(row + 2) % 3][(column + 2) % 3]
                        - m[(row + 1) % 3][(column + 2) % 3] * m[(row + 2) % 3][(column + 1) % 3];
            }
            determinant += row == 0 ? m[0][0] * inverse[0][0] + m[0][1] * inverse[1][0] + m[0][2] * inverse[2][0] : 0;
        }
        for (double[] row : inverse) {
            for (int column = 0; column < 3; column++) {
                row[column] /= determinant;
            }
        }
        return inverse;
    }
}
