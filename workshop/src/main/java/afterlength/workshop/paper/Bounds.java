package afterlength.workshop.paper;

import java.util.Collection;

/** The upright rectangle around something drawn, in millimetres. */
public record Bounds(double left_mm, double bottom_mm, double right_mm, double top_mm) {
    public Bounds {
        if (!(right_mm >= left_mm) || !(top_mm >= bottom_mm)) {
            throw new IllegalArgumentException("bounds from (" + left_mm + ", " + bottom_mm + ") to (" + right_mm + ", "
                    + top_mm + ") mm are inside out");
        }
    }

    static Bounds around(Collection<Point> points) {
        return new Bounds(
                points.stream().mapToDouble(Point::x_mm).min().orElseThrow(),
                points.stream().mapToDouble(Point::y_mm).min().orElseThrow(),
                points.stream().mapToDouble(Point::x_mm).max().orElseThrow(),
                points.stream().mapToDouble(Point::y_mm).max().orElseThrow());
    }

    public double width_mm() {
        return right_mm - left_mm;
    }

    public double height_mm() {
        return top_mm - bottom_mm;
    }

    public Bounds and(Bounds other) {
        return new Bounds(
                Math.min(left_mm, other.left_mm),
                Math.min(bottom_mm, other.bottom_mm),
                Math.max(right_mm, other.right_mm),
                Math.max(top_mm, other.top_mm));
    }

    public Bounds grown(double by_mm) {
        return new Bounds(left_mm - by_mm, bottom_mm - by_mm, right_mm + by_mm, top_mm + by_mm);
    }

    public Bounds moved(double right_mm, double up_mm) {
        return new Bounds(left_mm + right_mm, bottom_mm + up_mm, this.right_mm + right_mm, top_mm + up_mm);
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(Bounds other) {
        return left_mm < other.right_mm
                && other.left_mm < right_mm
                && bottom_mm < other.top_mm
                && other.bottom_mm < top_mm;
    }
}
