package afterlength.workshop.setup;

import afterlength.craft.setup.BowedString;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Angle;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The limits of the bow, lightly over the crown: each line has the angle of the bow at its place, lies on the two strings it
 * touches there, and is drawn where these cross the bridge. The strings fall by some tenths of a millimetre from bridge to bow;
 * that is left out, the angle is not.
 */
final class BowLines {
    private static final Stroke LIGHT = Stroke.dashed(Ink.FAINT, 0.1, 2.4, 1.2);
    /** How far a line runs on beyond the strings it lies on. */
    private static final double BEYOND_mm = 5;
    /** A line steeper than this would leave the sheet. */
    private static final double STEEPEST_deg = 75;

    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final Sketch sketch = new Sketch();

    private BowLines(BridgeShape shape) {
        this.shape = shape;
        this.outline = new BridgeOutline(shape);
    }

    /** The drawing with these lines laid over it. */
    static Drawing over(Drawing bridge, BridgeShape shape, SheetBow bow) {
        BowLines lines = new BowLines(shape);
        lines.draw(bow.open().strings());
        return bridge.with(lines.sketch.drawing("Limits of the bow", bow.words()));
    }

    private void draw(List<BowedString> strings) {
        int last = strings.size() - 1;
        strings.get(0).findLimitBass().ifPresent(limit -> line(limit, 0, 0, BEYOND_mm, 0));
        IntStream.range(0, last)
                .forEach(i -> strings.get(i)
                        .findLimitTreble()
                        .ifPresent(limit -> line(limit, i, i + 1, BEYOND_mm, BEYOND_mm)));
        strings.get(last).findLimitTreble().ifPresent(limit -> line(limit, last, last, 0, BEYOND_mm));
    }

    /** A line of this angle on the upper side of the strings from one to another, or on one alone and outwards from it. */
    private void line(Angle limit, int from, int to, double bassBeyond_mm, double trebleBeyond_mm) {
        if (Math.abs(limit.deg()) > STEEPEST_deg) {
            return;
        }
        double height_mm = Math.max(support_mm(limit, from), support_mm(limit, to));
        double left_mm = outline.stringCentre(from).x_mm() - bassBeyond_mm;
        double right_mm = outline.stringCentre(to).x_mm() + trebleBeyond_mm;
        sketch.line(on(limit, height_mm, left_mm), on(limit, height_mm, right_mm), LIGHT);
    }

    /** How far from the origin a line of this angle lies on a string. */
    private double support_mm(Angle limit, int string) {
        Point centre = outline.stringCentre(string);
        double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
        return centre.y_mm() * Math.cos(limit.rad()) - centre.x_mm() * Math.sin(limit.rad()) + radius_mm;
    }

    private static Point on(Angle limit, double height_mm, double x_mm) {
        return new Point(x_mm, (height_mm + x_mm * Math.sin(limit.rad())) / Math.cos(limit.rad()));
    }
}
