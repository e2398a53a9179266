package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.List;

/**
 * How far each side of a section may be moved out alone before it meets the edge of the hole: the two sides across its width, then
 * the two across its thickness, in the sense of the turn.
 */
public record Spare(double start_mm, double end_mm, double below_mm, double above_mm) {
    /** To be asked for a section that lies within the hole. */
    static Spare of(Outline hole, PlacedSection placed) {
        return new Spare(
                beyond(hole, placed, 180),
                beyond(hole, placed, 0),
                beyond(hole, placed, 270),
                beyond(hole, placed, 90));
    }

    private static double beyond(Outline hole, PlacedSection placed, double side_deg) {
        boolean alongWidth = side_deg % 180 == 0;
        double w_mm = placed.section().width_mm();
        double t_mm = placed.section().thickness_mm();
        double reach_mm = (alongWidth ? w_mm : t_mm) / 2;
        double halfBreadth_mm = (alongWidth ? t_mm : w_mm) / 2;
        double direction = Math.toRadians(placed.turn_deg() + side_deg);
        List<Point> points = hole.points();
        double nearest_mm = Double.POSITIVE_INFINITY;
        Point before = seen(points.get(points.size() - 1), placed.centre(), direction);
        for (Point each : points) {
            Point here = seen(each, placed.centre(), direction);
            nearest_mm = Math.min(nearest_mm, nearest(before, here, halfBreadth_mm));
            before = here;
        }
        return Math.max(0, nearest_mm - reach_mm);
    }

    /** As seen from the centre along the direction: x ahead, y to the side. */
    private static Point seen(Point point, Point centre, double direction) {
        double x = point.x_mm() - centre.x_mm();
        double y = point.y_mm() - centre.y_mm();
        return Point.of(
                x * Math.cos(direction) + y * Math.sin(direction), y * Math.cos(direction) - x * Math.sin(direction));
    }

    /** The nearest place ahead of one piece of the edge within the breadth; infinite when it lies beside or behind. */
    private static double nearest(Point from, Point to, double halfBreadth_mm) {
        double run = to.y_mm() - from.y_mm();
        double first = run == 0 ? 0 : shareAt(-Math.signum(run) * halfBreadth_mm, from, run);
        double last = run == 0 ? 1 : shareAt(Math.signum(run) * halfBreadth_mm, from, run);
        if (first >= last || (run == 0 && Math.abs(from.y_mm()) >= halfBreadth_mm)) {
            return Double.POSITIVE_INFINITY;
        }
        double ahead_mm =
                Math.min(from.towards(to, first).x_mm(), from.towards(to, last).x_mm());
        return ahead_mm > 0 ? ahead_mm : Double.POSITIVE_INFINITY;
    }

    private static double shareAt(double side_mm, Point from, double run) {
        return Math.max(0, Math.min(1, (side_mm - from.y_mm()) / run));
    }
}
