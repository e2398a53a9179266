package afterlength.craft.geometry;

/** A place on the drawing in millimetres: x to the treble side, y down the instrument. */
public record Point(double x_mm, double y_mm) {
    public Point {
        if (!Double.isFinite(x_mm) || !Double.isFinite(y_mm)) {
            throw new IllegalArgumentException("point (" + x_mm + ", " + y_mm + ") mm is not a place on the drawing");
        }
    }

    public static Point of(double x_mm, double y_mm) {
        return new Point(x_mm, y_mm);
    }

    public Point plus(double deltaX_mm, double deltaY_mm) {
        return new Point(x_mm + deltaX_mm, y_mm + deltaY_mm);
    }

    /** The same place on the other side of the centre line. */
    public Point mirrored() {
        return new Point(-x_mm, y_mm);
    }

    public Point scaled(double factor) {
        return new Point(x_mm * factor, y_mm * factor);
    }

    /** The place a share of the way to another one; 0 stays here, 1 arrives. */
    public Point towards(Point other, double share) {
        return new Point(x_mm + (other.x_mm - x_mm) * share, y_mm + (other.y_mm - y_mm) * share);
    }

    public double distanceTo_mm(Point other) {
        return Math.hypot(other.x_mm - x_mm, other.y_mm - y_mm);
    }
}
