package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.List;

/** A piece of card hollowed to the radius of the board at its end, to see whether the board still has it. */
final class BoardPiece {
    private static final double CARD_MM = 10;
    private static final double LINE_MM = 0.15;
    private static final double WORDS_MM = 2.6;

    private BoardPiece() {}

    static Drawing of(BridgeShape shape) {
        List<Point> arc = new BridgeOutline(shape).boardEnd();
        Point bass = arc.get(0);
        Point treble = arc.get(arc.size() - 1);
        double edge_mm = shape.inputs().projection_mm() + CARD_MM;
        Point bassCorner = new Point(bass.x_mm(), edge_mm);
        Point trebleCorner = new Point(treble.x_mm(), edge_mm);
        Stroke side = Stroke.dashed(Ink.INK, LINE_MM, 1.6, 1);
        Sketch sketch = new Sketch()
                .line(bass, bassCorner, side)
                .line(treble, trebleCorner, side)
                .line(bassCorner, trebleCorner, Stroke.of(Ink.INK, LINE_MM))
                .curve(arc, Stroke.of(Ink.ACCENT, LINE_MM * 1.7));
        String words =
                "end of board, radius " + Figures.tenths(shape.inputs().board().radius_mm());
        Point middle = new Point(0, edge_mm - CARD_MM / 2);
        sketch.words(words, middle, WORDS_MM, Anchor.MIDDLE, Face.SERIF_ITALIC, Ink.INK);
        return sketch.drawing("Negative of the board at its end", words);
    }
}
