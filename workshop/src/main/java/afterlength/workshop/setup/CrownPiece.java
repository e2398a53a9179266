package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of card with the crown along one edge: the crown itself, to lay behind the bridge, or its negative, to lay over it.
 * Heights are over the belly; the straight edge of the crown itself lies at a whole millimetre, which is written on it.
 */
final class CrownPiece {
    /** From the curve to the straight edge, where the curve is nearest to it. */
    private static final double CARD_MM = 16;
    /** How far the mark of a string runs into the card. */
    private static final double MARK_MM = 3.5;

    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final boolean hollow;
    private final double straightEdge_mm;
    private final Sketch sketch = new Sketch();

    private CrownPiece(BridgeShape shape, boolean hollow) {
        this.shape = shape;
        this.outline = new BridgeOutline(shape);
        this.look = BridgeLook.forPaper(shape);
        this.hollow = hollow;
        double lowest_mm =
                Math.min(outline.bassEnd().y_mm(), outline.trebleEnd().y_mm());
        this.straightEdge_mm = hollow ? Math.ceil(shape.highest().mm() + CARD_MM) : Math.floor(lowest_mm - CARD_MM);
    }

    static Drawing solid(BridgeShape shape) {
        return new CrownPiece(shape, false).draw("Crown");
    }

    static Drawing hollow(BridgeShape shape) {
        return new CrownPiece(shape, true).draw("Negative of the crown");
    }

    private Drawing draw(String title) {
        edges();
        shape.strings().forEach(this::mark);
        centreLine();
        words(title);
        return sketch.drawing(title, title + " at 1 : 1, with the place and the height over the belly of every string");
    }

    private void edges() {
        Point bass = outline.bassEnd();
        Point treble = outline.trebleEnd();
        Point bassCorner = new Point(bass.x_mm(), straightEdge_mm);
        Point trebleCorner = new Point(treble.x_mm(), straightEdge_mm);
        List<Point> curve = new ArrayList<>(outline.crown());
        curve.add(0, bass);
        curve.add(treble);
        Stroke side = Stroke.dashed(Ink.INK, look.line_mm(), 1.6, 1);
        sketch.line(bass, bassCorner, side).line(treble, trebleCorner, side);
        sketch.line(bassCorner, trebleCorner, Stroke.of(Ink.INK, look.line_mm()));
        sketch.curve(curve, Stroke.of(Ink.ACCENT, look.line_mm() * 1.7));
    }

    /** Into the card, upwards on the negative. */
    private double into_mm(double by_mm) {
        return hollow ? by_mm : -by_mm;
    }

    private void mark(SeatedString string) {
        Point wood = new Point(string.bridgeY().mm(), string.woodHeight().mm());
        sketch.line(wood, wood.moved(0, into_mm(MARK_MM)), Stroke.of(Ink.INK, look.line_mm()));
        double first_mm = MARK_MM + (hollow ? 0.4 : 1.1) * look.figure_mm();
        double second_mm = first_mm + 1.15 * look.figure_mm();
        Point name = wood.moved(0, into_mm(hollow ? second_mm : first_mm));
        Point height = wood.moved(0, into_mm(hollow ? first_mm : second_mm));
        sketch.words(string.name(), name, look.figure_mm(), Anchor.MIDDLE, Face.SERIF_ITALIC, Ink.INK);
        sketch.words(
                Figures.tenths(string.woodHeight()),
                height,
                0.85 * look.small_mm(),
                Anchor.MIDDLE,
                Face.SANS_STRONG,
                Ink.INK);
    }

    private void centreLine() {
        Point crown = new Point(0, shape.centreHeight().mm());
        Stroke stroke = Stroke.centreLine(Ink.INK, look.line_mm() * 0.8);
        sketch.line(crown.moved(0, into_mm(-2)), new Point(0, straightEdge_mm), stroke);
    }

    private void words(String title) {
        double outside_mm = into_mm(hollow ? 1 : 1.1 * look.small_mm() + 0.4);
        small("bass", new Point(outline.bassEnd().x_mm(), straightEdge_mm + outside_mm), Anchor.START);
        small("treble", new Point(outline.trebleEnd().x_mm(), straightEdge_mm + outside_mm), Anchor.END);
        String edge = hollow ? title : Figures.whole(straightEdge_mm) + " mm over the belly";
        Point inside = new Point(0, straightEdge_mm - into_mm(hollow ? 1.4 * look.small_mm() : 0.8 * look.small_mm()));
        sketch.wordsOnPaper(new Words(edge, inside, look.small_mm(), Anchor.MIDDLE, 0, Face.SERIF_ITALIC, Ink.FAINT));
    }

    private void small(String words, Point at, Anchor anchor) {
        sketch.words(words, at, look.small_mm(), anchor, Face.SERIF_ITALIC, Ink.FAINT);
    }
}
