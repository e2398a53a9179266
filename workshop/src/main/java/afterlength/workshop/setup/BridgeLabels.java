package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.craft.units.Length;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.DimensionLine;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Lettering;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Words;
import java.util.List;

/** The words and figures of the bridge drawing, each at the place it belongs to. */
final class BridgeLabels {
    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch;

    BridgeLabels(BridgeShape shape, BridgeOutline outline, BridgeLook look, Sketch sketch) {
        this.shape = shape;
        this.outline = outline;
        this.look = look;
        this.sketch = sketch;
    }

    void draw() {
        shape.strings().forEach(this::height);
        shape.strings().forEach(this::place);
        sides();
        open();
        boardEnd();
        projection();
        centreHeight();
    }

    void feet(Length footSpan) {
        double half_mm = footSpan.mm() / 2;
        double y_mm = -3.4 * look.small_mm();
        Stroke mark = Stroke.of(Ink.INK, look.line_mm() * 1.4);
        for (double x_mm : new double[] {-half_mm, half_mm}) {
            sketch.line(new Point(x_mm, -0.4 * look.small_mm()), new Point(x_mm, 0.9 * look.small_mm()), mark);
        }
        new DimensionLine(sketch, look.small_mm(), look.line_mm() * 0.8, Ink.FAINT)
                .level(-half_mm, half_mm, y_mm, "feet " + Figures.tenths(footSpan) + " over all");
    }

    private void height(SeatedString string) {
        double y_mm = string.bridgeY().mm();
        String height = Figures.tenths(string.woodHeight());
        double half_mm = Lettering.width_mm(Face.SANS_STRONG, height, look.figure_mm()) / 2;
        double over_mm =
                outline.highestBetween_mm(y_mm - half_mm, y_mm + half_mm) + standsOut_mm() + 0.45 * look.figure_mm();
        sketch.words(height, new Point(y_mm, over_mm), look.figure_mm(), Anchor.MIDDLE, Face.SANS_STRONG, Ink.INK);
        Point above = new Point(y_mm, over_mm + 1.05 * look.figure_mm());
        sketch.words(string.name(), above, look.figure_mm(), Anchor.MIDDLE, Face.SERIF_ITALIC, Ink.INK);
    }

    /** How far the band, or a thick string, reaches over the crown. */
    private double standsOut_mm() {
        double thickest_mm = shape.inputs().strings().stream()
                .mapToDouble(string -> string.diameter_mm())
                .max()
                .orElseThrow();
        return Math.max(
                shape.heightPlusMinus().mm(), thickest_mm * (1 - shape.inputs().grooveFraction()));
    }

    private void place(SeatedString string) {
        double y_mm = string.bridgeY().mm();
        Point under = new Point(y_mm, -look.belowBelly_mm() - look.small_mm());
        String place = Figures.tenths(Math.abs(y_mm));
        sketch.wordsOnPaper(new Words(place, under, look.small_mm(), Anchor.MIDDLE, 0, Face.SANS, Ink.FAINT));
    }

    private void sides() {
        double treble_mm = outline.trebleEnd().x_mm() + look.beside_mm();
        double bass_mm = outline.bassEnd().x_mm() - look.beside_mm();
        double under_mm = -1.5 * look.small_mm();
        italic("bass", new Point(bass_mm, under_mm), Anchor.START);
        italic("treble", new Point(treble_mm, under_mm), Anchor.END);
        italic("belly", new Point(treble_mm, 0.5 * look.small_mm()), Anchor.END);
    }

    private void open() {
        Point beside = outline.trebleEnd().moved(0.5 * look.small_mm(), -0.35 * look.small_mm());
        small("± " + Figures.tenths(shape.heightPlusMinus()), beside, Ink.ACCENT);
    }

    private void boardEnd() {
        List<Point> arc = outline.boardEnd();
        Point end = arc.get(arc.size() - 1);
        double aside_mm = Math.max(end.x_mm(), outline.trebleEnd().x_mm()) + 0.5 * look.small_mm();
        small("end of board", new Point(aside_mm, end.y_mm()), Ink.FAINT);
    }

    private void projection() {
        double x_mm = Math.min(-outline.boardHalfWidth_mm(), outline.bassEnd().x_mm()) - 2 * look.small_mm();
        Stroke thin = Stroke.dashed(Ink.FAINT, look.line_mm() * 0.6, 0.8, 0.8);
        sketch.line(new Point(x_mm, outline.projection_mm()), new Point(0, outline.projection_mm()), thin);
        new DimensionLine(sketch, look.small_mm(), look.line_mm() * 0.8, Ink.FAINT)
                .upright(x_mm, 0, outline.projection_mm(), "projection " + Figures.tenths(outline.projection_mm()));
    }

    private void centreHeight() {
        double height_mm = shape.centreHeight().mm();
        new DimensionLine(sketch, look.figure_mm(), look.line_mm(), Ink.ACCENT)
                .uprightWithLevelWords(0, 0, height_mm, outline.projection_mm() * 0.45, Figures.tenths(height_mm));
    }

    private void small(String words, Point at, Ink ink) {
        sketch.words(words, at, look.small_mm(), Anchor.START, Face.SANS, ink);
    }

    private void italic(String words, Point at, Anchor anchor) {
        sketch.words(words, at, look.small_mm(), anchor, Face.SERIF_ITALIC, Ink.FAINT);
    }
}
