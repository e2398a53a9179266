package afterlength.craft.access;

import java.util.Arrays;

/**
 * The corners of a turned hole from left to right. Those nearer together in x than a given distance stand on one level, as if
 * one above the other.
 *
 * <p>They are put in order by whole numbers that hold x in their upper part and the number of the corner in the lower, which sorts
 * several times as quickly as objects do. Cut by eleven bits, x is still good to 3·10⁻¹⁰ mm at half a metre.
 */
final class Corners {
    private static final int NUMBER_BITS = 11;
    private static final long NUMBER = (1L << NUMBER_BITS) - 1;

    final double[] y;
    /** The corners from left to right. */
    final int[] order;
    /** The level of each corner. */
    final int[] level;
    /** The x of each level. */
    final double[] levels;

    Corners(double[] x, double[] y, double same_mm) {
        if (x.length > NUMBER + 1) {
            throw new IllegalArgumentException(x.length + " corners are too many; give at most " + (NUMBER + 1));
        }
        this.y = y;
        order = order(x);
        level = new int[x.length];
        levels = levels(x, same_mm);
    }

    private static int[] order(double[] x) {
        long[] keys = new long[x.length];
        for (int i = 0; i < x.length; i++) {
            keys[i] = (rising(x[i]) & ~NUMBER) | i;
        }
        Arrays.sort(keys);
        int[] order = new int[x.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = (int) (keys[i] & NUMBER);
        }
        return order;
    }

    /** The bits of a number so that a greater number has the greater bits. */
    private static long rising(double value) {
        long bits = Double.doubleToRawLongBits(value);
        return bits ^ ((bits >> 63) & Long.MAX_VALUE);
    }

    private double[] levels(double[] x, double same_mm) {
        double[] found = new double[x.length];
        int count = 0;
        for (int corner : order) {
            if (count == 0 || x[corner] - found[count - 1] > same_mm) {
                found[count++] = x[corner];
            }
            level[corner] = count - 1;
        }
        return Arrays.copyOf(found, count);
    }
}
