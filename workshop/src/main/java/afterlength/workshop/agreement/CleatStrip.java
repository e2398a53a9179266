package afterlength.workshop.agreement;

import afterlength.craft.access.PlacedCleat;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.List;

/**
 * Cleats side by side at 1 : 1 on a strip for a blank whose grain runs along the strip: each is turned so that its own grain lies along
 * the strip too, and carries the line of the crack, by which it is laid.
 */
final class CleatStrip {
    private static final double BETWEEN_MM = 4;
    private static final double WIDEST_MM = 150;
    private static final Stroke CUT = Stroke.of(Ink.ACCENT, 0.2);
    private static final Stroke CRACK = Stroke.centreLine(Ink.INK, 0.15);
    private static final Stroke EDGE = Stroke.of(Ink.FAINT, 0.15);

    private CleatStrip() {}

    static Drawing of(AccessLook look) {
        List<PlacedCleat> cleats = look.row().cleats();
        double across_mm = Math.hypot(look.study().cleatLengthMm(), look.study().cleatWidthMm());
        double step_mm = across_mm + BETWEEN_MM;
        int inRow = Math.max(1, (int) (WIDEST_MM / step_mm));
        Sketch sketch = new Sketch();
        for (int i = 0; i < cleats.size(); i++) {
            int row = i / inRow;
            Point centre = new Point((i % inRow + 0.5) * step_mm, -(row + 0.5) * (step_mm + 6));
            put(sketch, look, cleats.get(i), centre, across_mm, i + 1);
        }
        double width_mm = Math.max(1, Math.min(inRow, cleats.size())) * step_mm;
        sketch.line(new Point(0, 4), new Point(width_mm, 4), EDGE);
        sketch.words(
                "grain of the blank along this line; dashed on a cleat: the crack",
                new Point(0, 6),
                2.6,
                Anchor.START,
                Face.SANS,
                Ink.FAINT);
        return sketch.drawing(
                "Cleats at 1 : 1",
                "Outlines of " + cleats.size() + " cleats, each with the line of the crack across it");
    }

    private static void put(
            Sketch sketch, AccessLook look, PlacedCleat cleat, Point centre, double across_mm, int number) {
        double turned_deg = -cleat.grain_deg();
        List<Point> corners = cleat.outline().points().stream()
                .map(corner -> turned(
                        corner.x_mm() - cleat.centre().x_mm(),
                        corner.y_mm() - cleat.centre().y_mm(),
                        turned_deg,
                        centre))
                .toList();
        sketch.area(corners, CUT, null);
        double crack = Math.toRadians(look.crack().direction_deg(cleat.along_mm()));
        double half_mm = across_mm / 2;
        Point from = turned(-half_mm * Math.cos(crack), -half_mm * Math.sin(crack), turned_deg, centre);
        Point to = turned(half_mm * Math.cos(crack), half_mm * Math.sin(crack), turned_deg, centre);
        sketch.line(from, to, CRACK);
        Point name = centre.moved(0, -half_mm - 3.5);
        sketch.words(Integer.toString(number), name, 3, Anchor.MIDDLE, Face.SANS, Ink.INK);
    }

    /** Turned in the axes of the tracing, y down; paper counts y up. */
    private static Point turned(double x_mm, double y_mm, double turn_deg, Point centre) {
        double turn = Math.toRadians(turn_deg);
        return centre.moved(
                x_mm * Math.cos(turn) - y_mm * Math.sin(turn), -(x_mm * Math.sin(turn) + y_mm * Math.cos(turn)));
    }
}
