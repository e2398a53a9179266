package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.Arrays;

/**
 * The thickest section of a width, by squares of paper: the hole is turned, laid on a raster, and a square counts when its middle
 * lies in the hole. Every turn is looked at; a range of turns is looked at more finely only while it may still hold a thicker
 * section than the best one found. A section at a turn less than δ away leaves, at this turn, one of w − T·δ by t − w·δ; that
 * one covers at least so many middles of squares as its sides are squares long, so nothing is lost.
 */
final class RasterOracle {
    private static final double FINEST_MM = 0.016;
    private static final int HALVINGS = 4;
    /** Turning a section within the finest range moves its corners by no more than this. */
    private static final double FINEST_TURN_MM = 0.008;

    private final double[] x;
    private final double[] y;
    private double width;
    private double low;
    private double high;

    RasterOracle(Outline hole) {
        x = hole.points().stream().mapToDouble(Point::x_mm).toArray();
        y = hole.points().stream().mapToDouble(Point::y_mm).toArray();
    }

    /** Between these two lies the thickness, 0 when nothing of this width goes in. */
    record Bracket(double low_mm, double high_mm) {}

    private record Range(double turn, double half, double square, double bound) {}

    Bracket thickest(double width_mm) {
        width = width_mm;
        low = 0;
        high = 0;
        double diagonal = Math.hypot(spread(x), spread(y));
        Range[] ranges = ranges(width_mm, diagonal);
        double thickest = Arrays.stream(ranges).mapToDouble(Range::bound).max().orElseThrow();
        if (thickest > width_mm) {
            ranges = ranges(thickest, thickest);
        }
        Arrays.sort(ranges, (a, b) -> Double.compare(b.bound, a.bound));
        for (Range range : ranges) {
            look(range);
        }
        return new Bracket(low, Math.max(low, high));
    }

    private Range[] ranges(double longer_mm, double bound) {
        double coarsest = FINEST_MM * (1 << HALVINGS);
        int count = (int) Math.ceil(Math.PI / 2 * longer_mm / (FINEST_TURN_MM * (1 << HALVINGS)));
        Range[] ranges = new Range[count];
        for (int i = 0; i < count; i++) {
            ranges[i] = bounded(new Range(Math.PI * (i + 0.5) / count, Math.PI / 2 / count, coarsest, bound));
        }
        return ranges;
    }

    private void look(Range range) {
        if (range.bound <= low) {
            return;
        }
        if (range.square <= FINEST_MM * 1.01) {
            int columns = (int) Math.ceil(width / range.square) + 1;
            low = Math.max(low, (longest(range, columns) - 1) * range.square);
            high = Math.max(high, range.bound);
            return;
        }
        Range before = bounded(part(range, -0.5));
        Range after = bounded(part(range, 0.5));
        boolean swap = after.bound > before.bound;
        look(swap ? after : before);
        look(swap ? before : after);
    }

    private static Range part(Range range, double side) {
        return new Range(range.turn + side * range.half, range.half / 2, range.square / 2, range.bound);
    }

    private Range bounded(Range range) {
        int columns = (int) Math.floor((width - range.bound * range.half) / range.square);
        int rows = longest(range, Math.max(columns, 1));
        double bound = (rows + 1) * range.square + width * range.half;
        return new Range(range.turn, range.half, range.square, Math.min(range.bound, bound));
    }

    /** Most rows, one above the other, that have so many columns in the hole. */
    private int longest(Range range, int columns) {
        double[] turnedX = new double[x.length];
        double[] turnedY = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            turnedX[i] = Math.cos(range.turn) * x[i] + Math.sin(range.turn) * y[i];
            turnedY[i] = Math.cos(range.turn) * y[i] - Math.sin(range.turn) * x[i];
        }
        double left = Arrays.stream(turnedX).min().orElseThrow();
        double bottom = Arrays.stream(turnedY).min().orElseThrow();
        int width = (int) Math.ceil(spread(turnedX) / range.square);
        int height = (int) Math.ceil(spread(turnedY) / range.square);
        int[] run = new int[width];
        int longest = 0;
        for (int row = 0; row < height; row++) {
            double level = bottom + (row + 0.5) * range.square;
            longest = Math.max(longest, rowOf(crossings(turnedX, turnedY, level), left, range.square, columns, run));
        }
        return longest;
    }

    /** Lengthens the run of every column from which enough columns lie in the hole in this row, and ends the others. */
    private static int rowOf(double[] crossings, double left, double square, int columns, int[] run) {
        int longest = 0;
        int done = 0;
        for (int i = 0; i + 1 < crossings.length; i += 2) {
            int from = Math.max(0, (int) Math.ceil((crossings[i] - left) / square - 0.5));
            int to = (int) Math.floor((crossings[i + 1] - left) / square - 0.5);
            int last = Math.min(to - columns + 1, run.length - 1);
            if (last >= from) {
                Arrays.fill(run, done, from, 0);
                for (int column = from; column <= last; column++) {
                    longest = Math.max(longest, ++run[column]);
                }
                done = last + 1;
            }
        }
        Arrays.fill(run, done, run.length, 0);
        return longest;
    }

    private static double[] crossings(double[] x, double[] y, double level) {
        double[] crossings = new double[x.length];
        int count = 0;
        for (int i = 0, before = x.length - 1; i < x.length; before = i++) {
            if (y[i] > level != y[before] > level) {
                crossings[count++] = x[before] + (x[i] - x[before]) * (level - y[before]) / (y[i] - y[before]);
            }
        }
        double[] sorted = Arrays.copyOf(crossings, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private static double spread(double[] values) {
        return Arrays.stream(values).max().orElseThrow()
                - Arrays.stream(values).min().orElseThrow();
    }
}
