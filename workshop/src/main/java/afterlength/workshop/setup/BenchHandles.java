package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.CrownPolyline;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.TemplateCrown;
import afterlength.workshop.paper.Point;
import java.util.ArrayList;
import java.util.List;

/** What can be dragged on a bridge: both clearances, the projection, and the crown by its radius or by the points of a template. */
final class BenchHandles {
    /** More points than this are a traced curve; nobody drags them one by one. */
    private static final int MOST_POINTS = 25;
    /** Near a flat crown a hair's breadth would change the radius by metres. */
    private static final double STEEPEST_GAIN = 60;

    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final List<BenchHandle> handles = new ArrayList<>();

    private BenchHandles(BridgeShape shape) {
        this.shape = shape;
        this.outline = new BridgeOutline(shape);
    }

    static List<BenchHandle> of(BridgeShape shape) {
        return new BenchHandles(shape).list();
    }

    private List<BenchHandle> list() {
        clearances();
        BridgeLook look = BenchFront.look(shape);
        Point boardLine = new Point(FrontLabels.projectionX_mm(outline, look), outline.projection_mm());
        handles.add(BenchHandle.ofField(
                "projection", "projection_mm", "Projection", boardLine, outline.projection_mm(), 1, 0.1, 250));
        if (shape.inputs().crown() instanceof RadiusCrown circle) {
            radius(circle.radius_mm());
        } else if (shape.inputs().crown() instanceof TemplateCrown template) {
            points(template.points());
        }
        return handles;
    }

    private void clearances() {
        BassTreble wanted_mm = shape.inputs().boardEndClearance_mm();
        double gain = shape.inputs().board().length_mm() / shape.inputs().speakingLength_mm();
        handles.add(BenchHandle.ofField(
                "clearance-bass",
                "board_end_clearance_mm/bass",
                "Clearance over the board end, bass",
                outline.stringCentre(0),
                wanted_mm.bass_mm(),
                gain,
                0.1,
                30));
        handles.add(BenchHandle.ofField(
                "clearance-treble",
                "board_end_clearance_mm/treble",
                "Clearance over the board end, treble",
                outline.stringCentre(shape.strings().size() - 1),
                wanted_mm.treble_mm(),
                gain,
                0.1,
                30));
    }

    /** A crown on a chord c with the rise h has the radius c²/8h + h/2; its middle is what is dragged. */
    private void radius(double radius_mm) {
        double chord_mm = outline.crown()
                .get(0)
                .distanceTo_mm(outline.crown().get(outline.crown().size() - 1));
        double rise_mm = radius_mm - Math.sqrt(Math.max(0, radius_mm * radius_mm - chord_mm * chord_mm / 4));
        double gain = 0.5 - chord_mm * chord_mm / (8 * rise_mm * rise_mm);
        Point middle = new Point(0, shape.centreHeight().mm());
        handles.add(BenchHandle.ofField(
                "radius",
                "crown/radius_mm",
                "Radius of the crown",
                middle,
                radius_mm,
                Math.max(-STEEPEST_GAIN, Math.min(0, gain)),
                0.5,
                500));
    }

    /** The corners of the crown that are points of the template, in their order; both its ends may hang over. */
    private void points(List<CrossPoint> template) {
        List<CrossPoint> placed = ((CrownPolyline) shape.crown()).vertices();
        if (template.size() > MOST_POINTS) {
            return;
        }
        int first = firstPlaced(template, placed);
        for (int i = 1; i < placed.size() - 1; i++) {
            int point = first + i - 1;
            Point at = new Point(
                    placed.get(i).y_mm(),
                    outline.projection_mm() + placed.get(i).z_mm());
            double z_mm = template.get(point).z_mm();
            handles.add(new BenchHandle(
                    "point-" + point,
                    SetupForm.TEMPLATE,
                    point,
                    "Point " + (point + 1) + " of the template, height",
                    "mm",
                    at,
                    z_mm,
                    1,
                    0.1,
                    z_mm - 30,
                    z_mm + 30));
        }
    }

    private static int firstPlaced(List<CrossPoint> template, List<CrossPoint> placed) {
        int corners = placed.size() - 2;
        int best = 0;
        double least_mm = Double.POSITIVE_INFINITY;
        for (int first = 0; first + corners <= template.size(); first++) {
            double off_mm = 0;
            for (int i = 1; i < corners; i++) {
                off_mm += Math.abs(step_mm(template, first + i) - step_mm(placed, i + 1));
            }
            if (off_mm < least_mm - 1e-9) {
                least_mm = off_mm;
                best = first;
            }
        }
        return best;
    }

    private static double step_mm(List<CrossPoint> points, int to) {
        CrossPoint a = points.get(to - 1);
        CrossPoint b = points.get(to);
        return Math.hypot(b.y_mm() - a.y_mm(), b.z_mm() - a.z_mm());
    }
}
