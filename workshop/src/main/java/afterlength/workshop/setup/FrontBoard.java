package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;

/** The end of the board behind the bridge, with every string as a ring where it passes over it and its clearance there. */
final class FrontBoard {
    private static final double SIDE_MM = 4;

    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch;

    FrontBoard(BridgeShape shape, BridgeOutline outline, BridgeLook look, Sketch sketch) {
        this.shape = shape;
        this.outline = outline;
        this.look = look;
        this.sketch = sketch;
    }

    void draw() {
        Stroke thin = Stroke.of(Ink.INK, look.line_mm());
        Point bass = outline.boardEnd().get(0);
        Point treble = outline.boardEnd().get(outline.boardEnd().size() - 1);
        sketch.line(bass, bass.moved(0, -SIDE_MM), thin).line(treble, treble.moved(0, -SIDE_MM), thin);
        for (int string = 0; string < shape.strings().size(); string++) {
            passing(string);
        }
        sketch.words(
                "over the board end, mm",
                treble.moved(0.6 * look.small_mm(), -1.1 * look.small_mm()),
                look.small_mm(),
                Anchor.START,
                Face.SERIF_ITALIC,
                Ink.FAINT);
    }

    private void passing(int index) {
        SeatedString string = shape.strings().get(index);
        double along = shape.inputs().board().length_mm() / shape.inputs().speakingLength_mm();
        double radius_mm = shape.inputs().strings().get(index).diameter_mm() / 2;
        double y_mm = between(string.nutY().mm(), string.bridgeY().mm(), along);
        double z_mm = between(string.nutUnderside().mm(), string.underside().mm(), along);
        Point ring = new Point(y_mm, outline.projection_mm() + z_mm + radius_mm);
        sketch.circle(ring, radius_mm, Stroke.of(Ink.FAINT, look.line_mm()));
        double board_mm = outline.projection_mm()
                - shape.inputs().board().radius_mm()
                + Math.sqrt(Math.pow(shape.inputs().board().radius_mm(), 2) - y_mm * y_mm);
        sketch.words(
                Figures.fixed(string.boardEndClearance().mm(), 1),
                new Point(y_mm, board_mm - 1.1 * look.small_mm()),
                look.small_mm(),
                Anchor.MIDDLE,
                Face.SANS,
                Ink.INK);
    }

    private static double between(double from, double to, double part) {
        return from + (to - from) * part;
    }
}
