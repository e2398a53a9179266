package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.SeatedString;
import afterlength.craft.units.Length;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.DimensionLine;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Lettering;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The bridge from the front as the player sees it, bass left, at 1 : 1. The origin lies on the belly under the centre line.
 * Heights stand over their strings, places across under them, the projection at the bass side; the band round the crown is
 * what the bench's reading errors leave open. Strings are discs of their true diameter. Left out: the feet, which are fitted
 * to the belly, and the heart and waist of the bridge, which are the maker's.
 */
public final class BridgeDrawing {
    private static final int CURVE_POINTS = 121;

    /** How far the crown is carried on beyond the outer strings, as a part of the distance between these. */
    private static final double BEYOND = 0.1;

    private final BridgeShape shape;
    private final BridgeLook look;
    private final double projection_mm;
    private final List<Point> crown;
    private final Point bassEnd;
    private final Point trebleEnd;
    private final Sketch sketch = new Sketch();

    private BridgeDrawing(BridgeShape shape, BridgeLook look) {
        this.shape = shape;
        this.look = look;
        projection_mm = shape.inputs().projection_mm();
        crown = overBelly(shape.crownPoints(CURVE_POINTS));
        bassEnd = beyond(crown.get(1), crown.get(0));
        trebleEnd = beyond(crown.get(CURVE_POINTS - 2), crown.get(CURVE_POINTS - 1));
    }

    /** For a page: letters and lines in proportion to the bridge. */
    public static Drawing forScreen(BridgeShape shape) {
        return new BridgeDrawing(shape, BridgeLook.forScreen(shape)).elevation(null);
    }

    /** For a 1 : 1 sheet: as a template to cut out, with the marks for the feet when their span is known. */
    public static Drawing forPaper(BridgeShape shape, @Nullable Length footSpan) {
        BridgeDrawing drawing = new BridgeDrawing(shape, BridgeLook.forPaper(shape));
        drawing.sides();
        return drawing.elevation(footSpan);
    }

    private Drawing elevation(@Nullable Length footSpan) {
        band();
        centreLine();
        stringLines();
        board();
        belly();
        crown();
        shape.strings().forEach(this::label);
        projection();
        centreHeight();
        if (footSpan != null) {
            feet(footSpan);
        }
        return sketch.drawing("Bridge from the front", description());
    }

    /** The edges along which a paper template is cut, down to the belly. */
    private void sides() {
        Stroke edge = Stroke.dashed(Ink.INK, look.line_mm(), 1.6, 1);
        sketch.line(bassEnd, new Point(bassEnd.x_mm(), 0), edge);
        sketch.line(trebleEnd, new Point(trebleEnd.x_mm(), 0), edge);
    }

    private void band() {
        double open_mm = shape.heightPlusMinus().mm();
        List<Point> around = new ArrayList<>();
        crown.forEach(point -> around.add(point.moved(0, open_mm)));
        for (int i = crown.size() - 1; i >= 0; i--) {
            around.add(crown.get(i).moved(0, -open_mm));
        }
        sketch.area(around, null, Ink.BAND);
        Point beside = trebleEnd.moved(0.5 * look.small_mm(), -0.35 * look.small_mm());
        small("± " + Figures.tenths(open_mm), beside, Anchor.START, Ink.ACCENT);
    }

    private void stringLines() {
        Stroke thin = Stroke.of(Ink.FAINT, look.line_mm() * 0.6);
        double below_mm = 0.5 * look.small_mm();
        for (SeatedString string : shape.strings()) {
            double y_mm = string.bridgeY().mm();
            sketch.line(
                    new Point(y_mm, -below_mm),
                    new Point(y_mm, string.woodHeight().mm()),
                    thin);
            String place = Figures.tenths(Math.abs(y_mm));
            Point under = new Point(y_mm, -below_mm - look.small_mm());
            sketch.wordsOnPaper(new Words(place, under, look.small_mm(), Anchor.MIDDLE, 0, Face.SANS, Ink.FAINT));
        }
    }

    private void board() {
        double half_mm = boardHalfWidth_mm();
        List<Point> arc = overBelly(shape.boardArcAtEnd(half_mm, CURVE_POINTS));
        sketch.curve(arc, Stroke.of(Ink.INK, look.line_mm()));
        Point end = arc.get(arc.size() - 1);
        double aside_mm = Math.max(end.x_mm(), trebleEnd.x_mm()) + 0.5 * look.small_mm();
        small("end of board", new Point(aside_mm, end.y_mm()), Anchor.START, Ink.FAINT);
    }

    /** The board is wider than its strings by a little more than half their distance at its end. */
    private double boardHalfWidth_mm() {
        double along = shape.inputs().board().length_mm() / shape.inputs().speakingLength_mm();
        double outer_mm = shape.strings().stream()
                .mapToDouble(string -> Math.abs(string.nutY().mm()
                        + along * (string.bridgeY().mm() - string.nutY().mm())))
                .max()
                .orElseThrow();
        return Math.min(outer_mm * 1.3, shape.inputs().board().radius_mm());
    }

    private void belly() {
        double side_mm = trebleEnd.x_mm() + 5 * look.small_mm();
        double otherSide_mm = bassEnd.x_mm() - 5 * look.small_mm();
        sketch.line(new Point(otherSide_mm, 0), new Point(side_mm, 0), Stroke.of(Ink.INK, look.line_mm() * 1.4));
        double under_mm = -1.5 * look.small_mm();
        italic("bass", new Point(otherSide_mm, under_mm), Anchor.START);
        italic("treble", new Point(side_mm, under_mm), Anchor.END);
        italic("belly", new Point(side_mm, 0.5 * look.small_mm()), Anchor.END);
    }

    /** Beyond the bridge only; between belly and crown the height stands in its place. */
    private void centreLine() {
        double crown_mm = shape.centreHeight().mm();
        Stroke stroke = Stroke.centreLine(Ink.INK, look.line_mm() * 0.8);
        sketch.line(new Point(0, 0), new Point(0, -2.6 * look.small_mm()), stroke);
        sketch.line(new Point(0, crown_mm), new Point(0, crown_mm + look.small_mm()), stroke);
    }

    private void crown() {
        double cut_mm = look.line_mm() * 1.7;
        Stroke carriedOn = Stroke.dashed(Ink.ACCENT, cut_mm, 5 * look.line_mm(), 5 * look.line_mm());
        sketch.line(crown.get(0), bassEnd, carriedOn);
        sketch.line(crown.get(crown.size() - 1), trebleEnd, carriedOn);
        sketch.curve(crown, Stroke.of(Ink.ACCENT, cut_mm));
        for (int i = 0; i < shape.strings().size(); i++) {
            double radius_mm = shape.inputs().strings().get(i).diameter_mm() / 2;
            sketch.disc(centre(i, radius_mm), radius_mm, null, Ink.INK);
        }
    }

    private Point centre(int string, double radius_mm) {
        SeatedString seated = shape.strings().get(string);
        return new Point(
                seated.bridgeY().mm(), projection_mm + seated.underside().mm() + radius_mm);
    }

    private void label(SeatedString string) {
        double y_mm = string.bridgeY().mm();
        String height = Figures.tenths(string.woodHeight());
        double half_mm = Lettering.width_mm(Face.SANS_STRONG, height, look.figure_mm()) / 2;
        double over_mm = highestBetween_mm(y_mm - half_mm, y_mm + half_mm) + 0.45 * look.figure_mm();
        sketch.words(height, new Point(y_mm, over_mm), look.figure_mm(), Anchor.MIDDLE, Face.SANS_STRONG, Ink.INK);
        Point above = new Point(y_mm, over_mm + 1.05 * look.figure_mm());
        sketch.words(string.name(), above, look.figure_mm(), Anchor.MIDDLE, Face.SERIF_ITALIC, Ink.INK);
    }

    /** Top of what is drawn there: the crown with its band, or a string that stands out of it. */
    private double highestBetween_mm(double from_mm, double to_mm) {
        double thickest_mm = shape.inputs().strings().stream()
                .mapToDouble(string -> string.diameter_mm())
                .max()
                .orElseThrow();
        double standsOut_mm = Math.max(
                shape.heightPlusMinus().mm(), thickest_mm * (1 - shape.inputs().grooveFraction()));
        return standsOut_mm
                + crown.stream()
                        .filter(point -> point.x_mm() >= from_mm && point.x_mm() <= to_mm)
                        .mapToDouble(Point::y_mm)
                        .max()
                        .orElseThrow();
    }

    private void projection() {
        double x_mm = Math.min(-boardHalfWidth_mm(), bassEnd.x_mm()) - 2 * look.small_mm();
        Stroke thin = Stroke.dashed(Ink.FAINT, look.line_mm() * 0.6, 0.8, 0.8);
        sketch.line(new Point(x_mm, projection_mm), new Point(0, projection_mm), thin);
        new DimensionLine(sketch, look.small_mm(), look.line_mm() * 0.8, Ink.FAINT)
                .upright(x_mm, 0, projection_mm, "projection " + Figures.tenths(projection_mm));
    }

    private void centreHeight() {
        double height_mm = shape.centreHeight().mm();
        new DimensionLine(sketch, look.figure_mm(), look.line_mm(), Ink.ACCENT)
                .uprightWithLevelWords(0, 0, height_mm, projection_mm * 0.45, Figures.tenths(height_mm));
    }

    private void feet(Length footSpan) {
        double half_mm = footSpan.mm() / 2;
        double y_mm = -3.4 * look.small_mm();
        Stroke mark = Stroke.of(Ink.INK, look.line_mm() * 1.4);
        for (double x_mm : new double[] {-half_mm, half_mm}) {
            sketch.line(new Point(x_mm, -0.4 * look.small_mm()), new Point(x_mm, 0.9 * look.small_mm()), mark);
        }
        new DimensionLine(sketch, look.small_mm(), look.line_mm() * 0.8, Ink.FAINT)
                .level(-half_mm, half_mm, y_mm, "feet " + Figures.tenths(footSpan) + " over all");
    }

    private void small(String words, Point at, Anchor anchor, Ink ink) {
        sketch.words(words, at, look.small_mm(), anchor, Face.SANS, ink);
    }

    private void italic(String words, Point at, Anchor anchor) {
        sketch.words(words, at, look.small_mm(), anchor, Face.SERIF_ITALIC, Ink.FAINT);
    }

    private Point beyond(Point before, Point end) {
        double outer_mm = crown.get(0).distanceTo_mm(crown.get(crown.size() - 1));
        double part = BEYOND * outer_mm / before.distanceTo_mm(end);
        return end.moved(part * (end.x_mm() - before.x_mm()), part * (end.y_mm() - before.y_mm()));
    }

    private List<Point> overBelly(List<CrossPoint> points) {
        return points.stream()
                .map(point -> new Point(point.y_mm(), projection_mm + point.z_mm()))
                .toList();
    }

    private String description() {
        String strings = shape.strings().stream()
                .map(string -> string.name() + " " + Figures.mm(string.woodHeight()))
                .collect(Collectors.joining(", "));
        return "Height over the belly on the centre line " + Figures.mm(shape.centreHeight()) + " ± "
                + Figures.mm(shape.heightPlusMinus()) + "; wood under the strings from bass to treble: " + strings;
    }
}
