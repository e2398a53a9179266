package afterlength.craft.access;

/**
 * The thickest level bar of one width between the strips of a hole that has been turned. A bar begins in one strip, goes through
 * some and ends in another; over such a choice its upper limit is the least of straight lines in x, its lower limit the greatest,
 * so that the thickest place is one of the two ends of the range or a crossing of two of the lines.
 *
 * <p>Only bars thicker than a floor are looked for, which cuts most of the work away.
 */
final class LevelBar {
    private final double width;
    private final double[] reach;
    private double thickness;
    private double x = Double.NaN;
    private double y = Double.NaN;
    private Strip first;

    private LevelBar(Strip[] strips, double width, double floor) {
        this.width = width;
        thickness = floor;
        reach = new double[strips.length];
        first = strips[0];
    }

    /** The thickest one, or one as thick as the floor and lying nowhere when none is thicker. */
    static LevelBar thickest(Strip[] strips, double width, double floor) {
        LevelBar bar = new LevelBar(strips, width, floor);
        bar.search(strips);
        return bar;
    }

    boolean isFound() {
        return !Double.isNaN(x);
    }

    double thickness() {
        return thickness;
    }

    /** Left end of the bar. */
    double x() {
        return x;
    }

    /** Height of its middle line. */
    double y() {
        return y;
    }

    /**
     * From right to left, so that it is known from each strip how far to the right something thicker than the floor could come. A bar
     * from further left comes no further than one cut off to begin here.
     */
    private void search(Strip[] strips) {
        for (int i = strips.length - 1; i >= 0; i--) {
            Strip strip = strips[i];
            reach[i] = reachOf(strip);
            if (reach[i] - strip.left >= width) {
                first = strip;
                reach[i] = Math.min(reach[i], begin());
            }
        }
    }

    /** Bends not considered. */
    private double reachOf(Strip strip) {
        if (strip.height() <= thickness) {
            return Double.NEGATIVE_INFINITY;
        }
        double far = strip.right();
        for (Strip next : strip.next()) {
            double further = reach[next.index];
            far = further > far ? further : far;
        }
        return far;
    }

    /** How far to the right a bar that begins in the first strip could come at most. */
    private double begin() {
        if (first.right() - first.left >= width) {
            endWithin();
        }
        double far = first.right();
        for (Strip next : first.next()) {
            double further = goInto(next, first.topRight(), first.bottomRight());
            far = further > far ? further : far;
        }
        return far;
    }

    /**
     * How far to the right a bar could come that begins in the first strip and goes on into this one, or more than that. Comparing by
     * hand where nothing can be missing is what most of the time goes into, and thrice as quick.
     */
    private double goInto(Strip from, double topSoFar, double bottomSoFar) {
        Strip strip = from;
        double top = topSoFar;
        double bottom = bottomSoFar;
        double far = strip.left;
        while (strip.left - first.right() <= width && reach[strip.index] - first.left >= width) {
            top = strip.topLeft < top ? strip.topLeft : top;
            bottom = strip.bottomLeft > bottom ? strip.bottomLeft : bottom;
            if (top - bottom <= thickness) {
                return strip.left > far ? strip.left : far;
            }
            if (strip.right() - first.left >= width) {
                endIn(strip, top, bottom);
            }
            top = strip.topRight() < top ? strip.topRight() : top;
            bottom = strip.bottomRight() > bottom ? strip.bottomRight() : bottom;
            Strip[] next = strip.next();
            if (top - bottom <= thickness || next.length == 0) {
                return strip.right() > far ? strip.right() : far;
            }
            for (int i = 1; i < next.length; i++) {
                double further = goInto(next[i], top, bottom);
                far = further > far ? further : far;
            }
            strip = next[0];
        }
        double further = Math.max(strip.left, reach[strip.index]);
        return further > far ? further : far;
    }

    private void endWithin() {
        double low = first.left;
        double high = first.right() - width;
        for (double start : new double[] {low, high}) {
            look(start, first, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        }
    }

    private void endIn(Strip last, double top, double bottom) {
        double low = Math.max(first.left, last.left - width);
        double high = Math.min(first.right(), last.right() - width);
        if (low > high) {
            return;
        }
        look(low, last, top, bottom);
        look(high, last, top, bottom);
        double topHere = first.topAt(low);
        double topThere = last.topAt(low + width);
        double bottomHere = first.bottomAt(low);
        double bottomThere = last.bottomAt(low + width);
        Crossings at = new Crossings(low, high, last, top, bottom);
        at.lookWhere(topHere - top, first.topSlope());
        at.lookWhere(topThere - top, last.topSlope());
        at.lookWhere(topHere - topThere, first.topSlope() - last.topSlope());
        at.lookWhere(bottomHere - bottom, first.bottomSlope());
        at.lookWhere(bottomThere - bottom, last.bottomSlope());
        at.lookWhere(bottomHere - bottomThere, first.bottomSlope() - last.bottomSlope());
    }

    /** The bar begins at the start; is it thicker than any before? */
    private void look(double start, Strip last, double topBetween, double bottomBetween) {
        double top = Math.min(topBetween, Math.min(first.topAt(start), last.topAt(start + width)));
        double bottom = Math.max(bottomBetween, Math.max(first.bottomAt(start), last.bottomAt(start + width)));
        if (top - bottom > thickness) {
            thickness = top - bottom;
            x = start;
            y = (top + bottom) / 2;
        }
    }

    /** Places where the difference of two lines, known at the low end of the range, becomes nothing. */
    private final class Crossings {
        private final double low;
        private final double high;
        private final Strip last;
        private final double top;
        private final double bottom;

        Crossings(double low, double high, Strip last, double top, double bottom) {
            this.low = low;
            this.high = high;
            this.last = last;
            this.top = top;
            this.bottom = bottom;
        }

        void lookWhere(double difference, double slope) {
            double start = low - difference / slope;
            if (start > low && start < high) {
                look(start, last, top, bottom);
            }
        }
    }
}
