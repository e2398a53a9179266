package afterlength.craft.geometry;

import java.util.function.UnaryOperator;

/**
 * A cubic Bézier curve: starts at {@code from} towards {@code leaving}, ends at {@code to} coming from {@code arriving}. A
 * straight line is the cubic whose handles lie a third of the way.
 */
public record Cubic(Point from, Point leaving, Point arriving, Point to) {

    static Cubic line(Point from, Point to) {
        return new Cubic(from, from.towards(to, 1 / 3.0), to.towards(from, 1 / 3.0), to);
    }

    /** The point at parameter 0 to 1, by repeated halving of the handles (de Casteljau). */
    public Point at(double t) {
        Point first = from.towards(leaving, t);
        Point middle = leaving.towards(arriving, t);
        Point last = arriving.towards(to, t);
        return first.towards(middle, t).towards(middle.towards(last, t), t);
    }

    public boolean isStraight() {
        double detour_mm = from.distanceTo_mm(leaving)
                + leaving.distanceTo_mm(arriving)
                + arriving.distanceTo_mm(to)
                - from.distanceTo_mm(to);
        return detour_mm < 1e-9;
    }

    /** Length of the three handles: never shorter than the curve. */
    double handleLength_mm() {
        return from.distanceTo_mm(leaving) + leaving.distanceTo_mm(arriving) + arriving.distanceTo_mm(to);
    }

    Cubic reversed() {
        return new Cubic(to, arriving, leaving, from);
    }

    Cubic moved(UnaryOperator<Point> change) {
        return new Cubic(change.apply(from), change.apply(leaving), change.apply(arriving), change.apply(to));
    }
}
