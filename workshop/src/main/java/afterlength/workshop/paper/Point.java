package afterlength.workshop.paper;

/** A place on a drawing: x to the right, y upwards, both in millimetres. */
public record Point(double x_mm, double y_mm) {
    public Point {
        if (!Double.isFinite(x_mm) || !Double.isFinite(y_mm)) {
            throw new IllegalArgumentException("the point (" + x_mm + ", " + y_mm + ") mm is not a place on paper");
        }
    }

    public Point moved(double right_mm, double up_mm) {
        return new Point(x_mm + right_mm, y_mm + up_mm);
    }

    public double distanceTo_mm(Point other) {
        return Math.hypot(other.x_mm - x_mm, other.y_mm - y_mm);
    }

    Point turned(double angle_deg) {
        double cos = Math.cos(Math.toRadians(angle_deg));
        double sin = Math.sin(Math.toRadians(angle_deg));
        return new Point(x_mm * cos - y_mm * sin, x_mm * sin + y_mm * cos);
    }
}
