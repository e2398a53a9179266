package afterlength.craft.colour;

/** Solves the few equations of one step by elimination with the largest pivot; the right side stands in the last column. */
final class SmallSystem {
    private SmallSystem() {}

    static double[] solve(double[][] rows) {
        int size = rows.length;
        for (int pivot = 0; pivot < size; pivot++) {
            bringUp(rows, pivot);
            for (int row = pivot + 1; row < size; row++) {
                double factor = rows[row][pivot] / rows[pivot][pivot];
                for (int column = pivot; column <= size; column++) {
                    rows[row][column] -= factor * rows[pivot][column];
                }
            }
        }
        return backwards(rows);
    }

    private static void bringUp(double[][] rows, int pivot) {
        int largest = pivot;
        for (int row = pivot + 1; row < rows.length; row++) {
            if (Math.abs(rows[row][pivot]) > Math.abs(rows[largest][pivot])) {
                largest = row;
            }
        }
        double[] moved = rows[pivot];
        rows[pivot] = rows[largest];
        rows[largest] = moved;
    }

    private static double[] backwards(double[][] rows) {
        int size = rows.length;
        double[] solution = new double[size];
        for (int row = size - 1; row >= 0; row--) {
            double rest = rows[row][size];
            for (int column = row + 1; column < size; column++) {
                rest -= rows[row][column] * solution[column];
            }
            solution[row] = rest / rows[row][row];
        }
        return solution;
    }
}
