package afterlength.craft.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays a template on the two outer wood points without stretching it. Of all the places on its edge that are as far apart as the
 * two points, those are taken that leave the same length of edge over at either end, so that a symmetrical template comes to lie
 * symmetrically; then it is turned and shifted until they meet the points.
 *
 * <p>The two places are searched by halving: walking in from both ends by the same length, the distance between them shrinks
 * from the width of the template to nothing (evenly so for any edge of the form of a bridge). Empty when the template is narrower
 * than the points are apart, or when, so laid, its edge would overhang (y no longer growing).
 */
final class TemplatePlacing {
    private static final int HALVINGS = 60;
    /** A template exactly as wide as the points are apart still fits. */
    private static final double ROUNDING_mm = 1e-6;

    private final TemplateEdge edge;
    private final CrossPoint bass;
    private final CrossPoint treble;

    private TemplatePlacing(TemplateCrown template, CrossPoint bass, CrossPoint treble) {
        this.edge = new TemplateEdge(template.points());
        this.bass = bass;
        this.treble = treble;
    }

    static Optional<CrownPolyline> find(TemplateCrown template, CrossPoint bass, CrossPoint treble) {
        return new TemplatePlacing(template, bass, treble).find();
    }

    private Optional<CrownPolyline> find() {
        if (width_mm(0) < bass.distanceTo_mm(treble) - ROUNDING_mm) {
            return Optional.empty();
        }
        List<CrossPoint> placed = turned(edge.between(overhang_mm()));
        return grows(placed) ? Optional.of(new CrownPolyline(placed)) : Optional.empty();
    }

    private double width_mm(double overhang_mm) {
        return edge.at(overhang_mm).distanceTo_mm(edge.at(edge.length_mm() - overhang_mm));
    }

    private double overhang_mm() {
        double chord_mm = bass.distanceTo_mm(treble);
        double wideEnough_mm = 0;
        double tooNarrow_mm = edge.length_mm() / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double middle_mm = (wideEnough_mm + tooNarrow_mm) / 2;
            if (width_mm(middle_mm) >= chord_mm) {
                wideEnough_mm = middle_mm;
            } else {
                tooNarrow_mm = middle_mm;
            }
        }
        return wideEnough_mm;
    }

    private List<CrossPoint> turned(List<CrossPoint> piece) {
        CrossPoint first = piece.get(0);
        CrossPoint last = piece.get(piece.size() - 1);
        double turn_rad = bearing_rad(bass, treble) - bearing_rad(first, last);
        double cos = Math.cos(turn_rad);
        double sin = Math.sin(turn_rad);
        List<CrossPoint> placed = new ArrayList<>(piece.size());
        for (CrossPoint point : piece) {
            double y_mm = point.y_mm() - first.y_mm();
            double z_mm = point.z_mm() - first.z_mm();
            placed.add(bass.plus(y_mm * cos - z_mm * sin, y_mm * sin + z_mm * cos));
        }
        return placed;
    }

    private static double bearing_rad(CrossPoint from, CrossPoint to) {
        return Math.atan2(to.z_mm() - from.z_mm(), to.y_mm() - from.y_mm());
    }

    private static boolean grows(List<CrossPoint> points) {
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).y_mm() <= points.get(i - 1).y_mm()) {
                return false;
            }
        }
        return true;
    }
}
