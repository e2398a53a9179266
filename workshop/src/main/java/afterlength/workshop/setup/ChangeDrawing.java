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

/**
 * Two set-ups over each other from the front, heights counted from one belly: as it came in dashes and rings, as it goes home in
 * full, with the difference of the wood over every string. The belly itself lies below the drawing.
 */
final class ChangeDrawing {
    private final BridgeOutline came;
    private final BridgeOutline goes;
    private final BridgeShape cameShape;
    private final BridgeShape goesShape;
    private final double size_mm;
    private final Sketch sketch = new Sketch();

    private ChangeDrawing(BridgeShape came, BridgeShape goes) {
        this.came = new BridgeOutline(came);
        this.goes = new BridgeOutline(goes);
        cameShape = came;
        goesShape = goes;
        size_mm =
                Math.max(1, (this.goes.trebleEnd().x_mm() - this.goes.bassEnd().x_mm()) / 30);
    }

    static Drawing of(BridgeShape came, BridgeShape goes) {
        return new ChangeDrawing(came, goes).draw();
    }

    private Drawing draw() {
        crown(came, cameShape, false);
        crown(goes, goesShape, true);
        new ChangePart(cameShape, goesShape).rows().forEach(this::difference);
        word("as it came " + Figures.fixed(cameShape.centreHeight().mm(), 1), came, -1, Ink.INK);
        word("as it goes home " + Figures.fixed(goesShape.centreHeight().mm(), 1), goes, 1, Ink.ACCENT);
        return sketch.drawing("As it came and as it goes home", new ChangePart(cameShape, goesShape).sentence());
    }

    private void crown(BridgeOutline outline, BridgeShape shape, boolean full) {
        double width_mm = size_mm * 0.08;
        Stroke board = Stroke.of(Ink.FAINT, width_mm * 0.7);
        sketch.curve(
                outline.boardEnd(),
                full ? board : Stroke.dashed(Ink.FAINT, width_mm * 0.7, size_mm * 0.5, size_mm * 0.4));
        sketch.curve(
                outline.crown(),
                full
                        ? Stroke.of(Ink.ACCENT, width_mm)
                        : Stroke.dashed(Ink.INK, width_mm, size_mm * 0.7, size_mm * 0.45));
        for (int string = 0; string < shape.strings().size(); string++) {
            double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
            Point centre = outline.stringCentre(string);
            if (full) {
                sketch.disc(centre, radius_mm, null, Ink.INK);
            } else {
                sketch.circle(centre, radius_mm, Stroke.of(Ink.INK, width_mm * 0.6));
            }
        }
    }

    private void difference(ChangePart.Row row) {
        double highest_mm =
                Math.max(row.goes().woodHeight().mm(), row.came().woodHeight().mm());
        Point over = new Point(row.goes().bridgeY().mm(), highest_mm + 1.1 * size_mm);
        sketch.words(row.wood(), over, size_mm, Anchor.MIDDLE, Face.SANS_STRONG, Ink.INK);
    }

    private void word(String words, BridgeOutline outline, int side, Ink ink) {
        Point end = side < 0
                ? outline.crown().get(0)
                : outline.crown().get(outline.crown().size() - 1);
        sketch.words(
                words,
                end.moved(side * 1.2 * size_mm, -0.3 * size_mm),
                size_mm,
                side < 0 ? Anchor.END : Anchor.START,
                Face.SANS,
                ink);
    }
}
