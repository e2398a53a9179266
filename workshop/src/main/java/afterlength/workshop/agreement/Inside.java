package afterlength.workshop.agreement;

import afterlength.craft.access.KeepOff;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands inside and where, in the axes in which hole and crack were traced, and how these axes lie.
 *
 * @param grainLineDeg direction of the plate's grain, from the x axis (right) towards the y axis (down); 90 is along y
 * @param bar the middle line of the bass bar, one point a line, empty when not told
 * @param barMm breadth of the bar
 * @param post the middle of the post's place, one point
 * @param postMm its diameter
 * @param lining the inner edge of the lining as a line
 * @param liningMm breadth of what lies along that line
 * @param photographId on which hole and crack were traced, or null
 * @param photographHeightMm height over the card of the traced hole
 */
public record Inside(
        double grainLineDeg,
        String bar,
        double barMm,
        String post,
        double postMm,
        String lining,
        double liningMm,
        @Nullable Long photographId,
        double photographHeightMm) {
    /** Nothing told, the grain along y: common practice for the breadths. */
    public static final Inside UNTOLD = new Inside(90, "", 6, "", 6, "", 3, null, 0);

    /** Glue runs, and a hand inside sees nothing: our own choice of what stays free round bar, post and lining. */
    static final double MARGIN_MM = 2;

    private static final int ROUND = 24;

    /** Everything told, as figures that no cleat may lie on. */
    List<KeepOff> keepOffs() {
        List<KeepOff> all = new ArrayList<>();
        along(TracedPoints.kept(bar), barMm).forEach(piece -> all.add(keep(KeepOff.Kind.BAR, piece)));
        TracedPoints.kept(post).forEach(middle -> all.add(keep(KeepOff.Kind.POST, round(middle, postMm / 2))));
        along(TracedPoints.kept(lining), liningMm).forEach(piece -> all.add(keep(KeepOff.Kind.LINING, piece)));
        return all;
    }

    private static KeepOff keep(KeepOff.Kind kind, Outline outline) {
        return new KeepOff(kind, outline, MARGIN_MM);
    }

    /** A rectangle along each piece of the line; the bends lie within the margin. */
    private static List<Outline> along(List<Point> line, double broad_mm) {
        List<Outline> pieces = new ArrayList<>();
        for (int i = 1; i < line.size(); i++) {
            Point from = line.get(i - 1);
            Point to = line.get(i);
            double length_mm = from.distanceTo_mm(to);
            if (length_mm > 0) {
                double x = (to.y_mm() - from.y_mm()) / length_mm * broad_mm / 2;
                double y = -(to.x_mm() - from.x_mm()) / length_mm * broad_mm / 2;
                pieces.add(new Outline(List.of(from.plus(x, y), to.plus(x, y), to.plus(-x, -y), from.plus(-x, -y))));
            }
        }
        return pieces;
    }

    private static Outline round(Point middle, double radius_mm) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < ROUND; i++) {
            double turn = 2 * Math.PI * i / ROUND;
            ring.add(middle.plus(radius_mm * Math.cos(turn), radius_mm * Math.sin(turn)));
        }
        return new Outline(ring);
    }
}
