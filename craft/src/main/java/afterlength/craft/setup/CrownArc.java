package afterlength.craft.setup;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The upper arc of a circle through two points, centre below their chord.
 *
 * @param from the bass wood point
 * @param to the treble wood point
 */
public record CrownArc(CrossPoint centre, double radius_mm, CrossPoint from, CrossPoint to) implements CrownCurve {

    /** Defined for a radius of at least half the distance between the points. */
    static CrownArc through(CrossPoint from, CrossPoint to, double radius_mm) {
        double chord_mm = from.distanceTo_mm(to);
        double down_mm = Math.sqrt(Math.max(0, radius_mm * radius_mm - chord_mm * chord_mm / 4));
        double alongY = (to.y_mm() - from.y_mm()) / chord_mm;
        double alongZ = (to.z_mm() - from.z_mm()) / chord_mm;
        CrossPoint centre = new CrossPoint(
                (from.y_mm() + to.y_mm()) / 2 + down_mm * alongZ, (from.z_mm() + to.z_mm()) / 2 - down_mm * alongY);
        return new CrownArc(centre, radius_mm, from, to);
    }

    /** The smallest radius that leaves no undercut: the lower point is then level with the centre. */
    static double smallestUpright_mm(CrossPoint from, CrossPoint to) {
        double chord_mm = from.distanceTo_mm(to);
        return chord_mm * chord_mm / (2 * (to.y_mm() - from.y_mm()));
    }

    @Override
    public double height_mm(double y_mm) {
        double aside_mm = y_mm - centre.y_mm();
        return centre.z_mm() + Math.sqrt(Math.max(0, radius_mm * radius_mm - aside_mm * aside_mm));
    }

    @Override
    public CrossPoint highest() {
        if (centre.y_mm() >= from.y_mm() && centre.y_mm() <= to.y_mm()) {
            return centre.plus(0, radius_mm);
        }
        return from.z_mm() >= to.z_mm() ? from : to;
    }

    @Override
    public List<CrossPoint> points(int count) {
        double start_rad = Math.atan2(from.z_mm() - centre.z_mm(), from.y_mm() - centre.y_mm());
        double sweep_rad = 2 * Math.asin(Math.min(1, from.distanceTo_mm(to) / (2 * radius_mm)));
        return IntStream.range(0, count)
                .mapToDouble(i -> start_rad - sweep_rad * i / (count - 1))
                .mapToObj(turn_rad -> centre.plus(radius_mm * Math.cos(turn_rad), radius_mm * Math.sin(turn_rad)))
                .toList();
    }
}
