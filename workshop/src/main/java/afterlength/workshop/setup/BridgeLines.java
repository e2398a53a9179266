package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.ArrayList;
import java.util.List;

/** The lines of the bridge drawing, without a word on them. */
final class BridgeLines {
    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch;

    BridgeLines(BridgeShape shape, BridgeOutline outline, BridgeLook look, Sketch sketch) {
        this.shape = shape;
        this.outline = outline;
        this.look = look;
        this.sketch = sketch;
    }

    /** The edges along which a paper template is cut, down to the belly. */
    void sides() {
        Stroke edge = Stroke.dashed(Ink.INK, look.line_mm(), 1.6, 1);
        sketch.line(outline.bassEnd(), new Point(outline.bassEnd().x_mm(), 0), edge);
        sketch.line(outline.trebleEnd(), new Point(outline.trebleEnd().x_mm(), 0), edge);
    }

    void draw() {
        band();
        centreLine();
        strings();
        sketch.curve(outline.boardEnd(), Stroke.of(Ink.INK, look.line_mm()));
        belly();
        crown();
    }

    private void band() {
        double open_mm = shape.heightPlusMinus().mm();
        List<Point> around = new ArrayList<>();
        outline.crown().forEach(point -> around.add(point.moved(0, open_mm)));
        for (int i = outline.crown().size() - 1; i >= 0; i--) {
            around.add(outline.crown().get(i).moved(0, -open_mm));
        }
        sketch.area(around, null, Ink.BAND);
    }

    /** Beyond the bridge only; between belly and crown the height stands in its place. */
    private void centreLine() {
        double crown_mm = shape.centreHeight().mm();
        Stroke stroke = Stroke.centreLine(Ink.INK, look.line_mm() * 0.8);
        sketch.line(new Point(0, 0), new Point(0, -2.6 * look.small_mm()), stroke);
        sketch.line(new Point(0, crown_mm), new Point(0, crown_mm + look.small_mm()), stroke);
    }

    private void strings() {
        Stroke thin = Stroke.of(Ink.FAINT, look.line_mm() * 0.6);
        for (SeatedString string : shape.strings()) {
            double y_mm = string.bridgeY().mm();
            sketch.line(
                    new Point(y_mm, -look.belowBelly_mm()),
                    new Point(y_mm, string.woodHeight().mm()),
                    thin);
        }
    }

    private void belly() {
        Point treble = new Point(outline.trebleEnd().x_mm() + look.beside_mm(), 0);
        Point bass = new Point(outline.bassEnd().x_mm() - look.beside_mm(), 0);
        sketch.line(bass, treble, Stroke.of(Ink.INK, look.line_mm() * 1.4));
    }

    private void crown() {
        List<Point> crown = outline.crown();
        double cut_mm = look.line_mm() * 1.7;
        Stroke carriedOn = Stroke.dashed(Ink.ACCENT, cut_mm, 5 * look.line_mm(), 5 * look.line_mm());
        sketch.line(crown.get(0), outline.bassEnd(), carriedOn);
        sketch.line(crown.get(crown.size() - 1), outline.trebleEnd(), carriedOn);
        sketch.curve(crown, Stroke.of(Ink.ACCENT, cut_mm));
        for (int i = 0; i < shape.strings().size(); i++) {
            double radius_mm = shape.inputs().strings().get(i).diameter_mm() / 2;
            sketch.disc(outline.stringCentre(i), radius_mm, null, Ink.INK);
        }
    }
}
