package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.DimensionLine;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Words;

/** Words and figures on the workbench's drawing: names and wood heights in one row under the board, the rest where it belongs. */
final class FrontLabels {
    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch;

    FrontLabels(BridgeShape shape, BridgeOutline outline, BridgeLook look, Sketch sketch) {
        this.shape = shape;
        this.outline = outline;
        this.look = look;
        this.sketch = sketch;
    }

    /** Where the projection is measured in the drawing, beside board and bridge on the bass side. */
    static double projectionX_mm(BridgeOutline outline, BridgeLook look) {
        return Math.min(-outline.boardHalfWidth_mm(), outline.bassEnd().x_mm()) - 3 * look.small_mm();
    }

    void draw() {
        shape.strings().forEach(this::heights);
        double treble_mm = outline.trebleEnd().x_mm() + look.beside_mm();
        double bass_mm = outline.bassEnd().x_mm() - look.beside_mm();
        italic("bass", new Point(bass_mm, 0.5 * look.small_mm()), Anchor.START);
        italic("treble", new Point(treble_mm, 0.5 * look.small_mm()), Anchor.END);
        italic(
                "wood over the belly, mm",
                new Point(outline.trebleEnd().x_mm() + look.small_mm(), row_mm()),
                Anchor.START);
        italic(
                "from the centre, mm",
                new Point(outline.trebleEnd().x_mm() + look.small_mm(), under_mm()),
                Anchor.START);
        Point beside = outline.trebleEnd().moved(0.8 * look.small_mm(), -0.6 * look.small_mm());
        sketch.words(
                "± " + Figures.fixed(shape.heightPlusMinus().mm(), 1),
                beside,
                look.small_mm(),
                Anchor.START,
                Face.SANS,
                Ink.ACCENT);
        projection();
        double height_mm = shape.centreHeight().mm();
        new DimensionLine(sketch, 1.15 * look.figure_mm(), look.line_mm() * 1.2, Ink.ACCENT)
                .uprightWithLevelWords(0, 0, height_mm, row_mm() - 3.4 * look.figure_mm(), Figures.fixed(height_mm, 1));
    }

    private double row_mm() {
        return outline.projection_mm() * 0.56;
    }

    private double under_mm() {
        return -look.belowBelly_mm() - look.small_mm();
    }

    private void heights(SeatedString string) {
        double y_mm = string.bridgeY().mm();
        String height = Figures.fixed(string.woodHeight().mm(), 1);
        onPaper(height, new Point(y_mm, row_mm()), look.figure_mm(), Face.SANS_STRONG, Ink.INK);
        Point above = new Point(y_mm, row_mm() + 1.15 * look.figure_mm());
        onPaper(string.name(), above, look.figure_mm(), Face.SERIF_ITALIC, Ink.INK);
        String place = Figures.fixed(Math.abs(y_mm), 1);
        onPaper(place, new Point(y_mm, under_mm()), look.small_mm(), Face.SANS, Ink.FAINT);
    }

    private void projection() {
        double x_mm = projectionX_mm(outline, look);
        Stroke thin = Stroke.dashed(Ink.FAINT, look.line_mm() * 0.8, 0.8, 0.8);
        sketch.line(new Point(x_mm, outline.projection_mm()), new Point(0, outline.projection_mm()), thin);
        new DimensionLine(sketch, look.small_mm(), look.line_mm(), Ink.FAINT)
                .upright(x_mm, 0, outline.projection_mm(), "projection " + Figures.fixed(outline.projection_mm(), 1));
    }

    private void onPaper(String words, Point at, double size_mm, Face face, Ink ink) {
        sketch.wordsOnPaper(new Words(words, at, size_mm, Anchor.MIDDLE, 0, face, ink));
    }

    private void italic(String words, Point at, Anchor anchor) {
        sketch.words(words, at, look.small_mm(), anchor, Face.SERIF_ITALIC, Ink.FAINT);
    }
}
