package afterlength.sight.card;

import afterlength.craft.geometry.Point;

/** A filled rectangle along the edges of the card. */
public record Rectangle(double left_mm, double top_mm, double width_mm, double height_mm) {
    static Rectangle between(Point one, Point other) {
        return new Rectangle(
                Math.min(one.x_mm(), other.x_mm()),
                Math.min(one.y_mm(), other.y_mm()),
                Math.abs(one.x_mm() - other.x_mm()),
                Math.abs(one.y_mm() - other.y_mm()));
    }
}
