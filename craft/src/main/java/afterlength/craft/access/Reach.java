package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.Collection;
import java.util.List;

/**
 * How far a clamp has to reach from the edge of the sound-hole: from a place to the nearest point of the edge, in the flat. Over an arch
 * the way is a little longer, and a clamp whose post does not fit at the nearest point has to reach further.
 */
public final class Reach {
    /** Along the crack it is looked so often. */
    private static final double STEP_MM = 0.5;

    private Reach() {}

    /** From one place. */
    public static double throat_mm(Outline hole, Point place) {
        double nearest_mm = Double.POSITIVE_INFINITY;
        Point before = hole.points().get(hole.points().size() - 1);
        for (Point here : hole.points()) {
            nearest_mm = Math.min(nearest_mm, distance_mm(place, before, here));
            before = here;
        }
        return nearest_mm;
    }

    /** What reaches every place of the crack. */
    public static double throat_mm(Outline hole, Crack crack) {
        double furthest_mm = 0;
        double length_mm = crack.length_mm();
        int count = (int) Math.ceil(length_mm / STEP_MM);
        for (int i = 0; i <= count; i++) {
            furthest_mm = Math.max(furthest_mm, throat_mm(hole, crack.at(length_mm * i / count)));
        }
        return furthest_mm;
    }

    /** The cleats that none of the clamps reaches, each clamp with some air between its post and the edge. */
    public static List<PlacedCleat> outOfReach(
            Outline hole, List<PlacedCleat> cleats, Collection<Clamp> clamps, double clearance_mm) {
        double longest_mm = clamps.stream().mapToDouble(Clamp::throat_mm).max().orElse(0);
        return cleats.stream()
                .filter(cleat -> throat_mm(hole, cleat.centre()) + clearance_mm > longest_mm)
                .toList();
    }

    private static double distance_mm(Point place, Point from, Point to) {
        double x = to.x_mm() - from.x_mm();
        double y = to.y_mm() - from.y_mm();
        double along = (place.x_mm() - from.x_mm()) * x + (place.y_mm() - from.y_mm()) * y;
        double square = x * x + y * y;
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, along / square));
        return place.distanceTo_mm(from.towards(to, share));
    }
}
