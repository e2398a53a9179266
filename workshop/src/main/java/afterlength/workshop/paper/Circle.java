package afterlength.workshop.paper;

import org.jspecify.annotations.Nullable;

/**
 * A circle, such as a string seen end on.
 *
 * @param stroke the line, or null for a filled disc without one
 * @param fill what lies inside, or null for nothing
 */
public record Circle(
        Point centre,
        double radius_mm,
        @Nullable Stroke stroke,
        @Nullable Ink fill) implements Shape {
    public Circle {
        if (!(radius_mm > 0)) {
            throw new IllegalArgumentException(
                    "a circle of radius " + radius_mm + " mm cannot be drawn; give more than 0 mm");
        }
    }

    @Override
    public Bounds bounds() {
        return new Bounds(centre.x_mm(), centre.y_mm(), centre.x_mm(), centre.y_mm()).grown(radius_mm);
    }

    @Override
    public Circle moved(double right_mm, double up_mm) {
        return new Circle(centre.moved(right_mm, up_mm), radius_mm, stroke, fill);
    }
}
