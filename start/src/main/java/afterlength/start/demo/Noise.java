package afterlength.start.demo;

import java.util.SplittableRandom;

/**
 * Smooth chance: a square tile of random numbers between −1 and 1, read between its points along a soft step, repeating after
 * 256 units. The same seed gives the same tile on every machine.
 */
final class Noise {
    private static final int SIZE = 256;
    private static final int MASK = SIZE - 1;

    private final float[] tile = new float[SIZE * SIZE];

    Noise(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < tile.length; i++) {
            tile[i] = (float) random.nextDouble(-1, 1);
        }
    }

    /** One value per unit square, smooth between. */
    double at(double x, double y) {
        int column = (int) Math.floor(x);
        int row = (int) Math.floor(y);
        double shareX = soft(x - column);
        double shareY = soft(y - row);
        int left = column & MASK;
        int right = (column + 1) & MASK;
        int upper = (row & MASK) * SIZE;
        int lower = ((row + 1) & MASK) * SIZE;
        double above = tile[upper + left] + (tile[upper + right] - tile[upper + left]) * shareX;
        double below = tile[lower + left] + (tile[lower + right] - tile[lower + left]) * shareX;
        return above + (below - above) * shareY;
    }

    /** Three layers, each twice as fine and half as strong: clouds, stains, worn places. */
    double cloud(double x, double y) {
        return (at(x, y) + at(x * 2.03 + 17, y * 2.03 + 5) / 2 + at(x * 4.1 + 31, y * 4.1 + 71) / 4) / 1.75;
    }

    private static double soft(double share) {
        return share * share * (3 - 2 * share);
    }
}
