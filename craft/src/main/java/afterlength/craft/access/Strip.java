package afterlength.craft.access;

/**
 * A piece of the hole between two straight pieces of its edge, one above and one below, and two upright cuts. It opens on the
 * right into those strips through which a level bar could go on.
 */
final class Strip {
    private static final Strip[] NONE = {};
    /** Two strips that only touch at a point do not open into each other; in millimetres, far below what a knife can do. */
    private static final double TOUCHING_MM = 1e-12;

    final int index;
    /** The pieces of edge below and above, by number. */
    final int bottom;

    final int top;
    final double left;
    final double bottomLeft;
    final double topLeft;
    private double right;
    private double bottomSlope;
    private double topSlope;
    private double bottomRight;
    private double topRight;
    private double height;
    private Strip[] next = NONE;

    Strip(int index, int bottom, int top, double left, double bottomLeft, double topLeft) {
        this.index = index;
        this.bottom = bottom;
        this.top = top;
        this.left = left;
        this.bottomLeft = bottomLeft;
        this.topLeft = topLeft;
    }

    void closeAt(double x, double bottom, double top) {
        right = x;
        bottomRight = bottom;
        topRight = top;
        bottomSlope = (bottom - bottomLeft) / (x - left);
        topSlope = (top - topLeft) / (x - left);
        height = Math.max(topLeft - bottomLeft, topRight - bottomRight);
    }

    void opensInto(Strip other) {
        if (Math.min(topRight, other.topLeft) - Math.max(bottomRight, other.bottomLeft) > TOUCHING_MM) {
            Strip[] longer = new Strip[next.length + 1];
            System.arraycopy(next, 0, longer, 0, next.length);
            longer[next.length] = other;
            next = longer;
        }
    }

    Strip[] next() {
        return next;
    }

    double right() {
        return right;
    }

    double bottomRight() {
        return bottomRight;
    }

    double topRight() {
        return topRight;
    }

    double bottomSlope() {
        return bottomSlope;
    }

    double topSlope() {
        return topSlope;
    }

    double bottomAt(double x) {
        return bottomLeft + bottomSlope * (x - left);
    }

    double topAt(double x) {
        return topLeft + topSlope * (x - left);
    }

    /** Its greatest height; edges are straight, so it is at one of the two cuts. */
    double height() {
        return height;
    }
}
