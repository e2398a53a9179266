package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.DimensionLine;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.List;
import java.util.Optional;

/**
 * Nut, board, strings and bridge from the side at true proportions, nut left; origin on the belly under the bridge, level as the
 * plane of the edges. The board line rises by its measured slope; where that is not known it is drawn level, and the drawing says
 * so. Left out: the arch of the belly and the neck.
 */
final class SideView {
    private final BenchTail tail;
    private final BridgeShape shape;
    private final double slope_rad;
    private final double size_mm;
    private final Sketch sketch = new Sketch();

    private SideView(BenchTail tail) {
        this.tail = tail;
        shape = tail.shape();
        slope_rad = Math.toRadians(tail.bench().find(BenchReading.BOARD_SLOPE).orElse(0.0));
        size_mm = Math.max(1, shape.inputs().speakingLength_mm() / 52);
    }

    static Drawing of(BenchTail tail) {
        return new SideView(tail).draw();
    }

    private Drawing draw() {
        double length_mm = shape.inputs().speakingLength_mm();
        double board_mm = shape.inputs().board().length_mm();
        Stroke thin = Stroke.dashed(Ink.FAINT, line_mm(), size_mm * 0.6, size_mm * 0.4);
        sketch.line(at(-length_mm, 0), at(0, 0), thin);
        sketch.line(at(-length_mm, 0), at(board_mm - length_mm, 0), Stroke.of(Ink.INK, line_mm() * 2.4));
        sketch.line(
                new Point(-0.55 * length_mm, 0), new Point(0.2 * length_mm, 0), Stroke.of(Ink.INK, line_mm() * 1.4));
        small("belly, level as the edges", new Point(-0.55 * length_mm, -1.1 * size_mm), Anchor.START);
        strings();
        bridge();
        boardEnd();
        behind();
        String level = slope_rad == 0 ? " The slope of the board is not known; the board line is drawn level." : "";
        if (slope_rad == 0) {
            small("slope of the board not measured, drawn level", at(-length_mm, -2.4 * size_mm), Anchor.START);
        }
        return sketch.drawing(
                "The instrument from the side",
                "Projection " + Figures.mm(shape.inputs().projection_mm(), 1) + ", bridge "
                        + Figures.mm(shape.centreHeight().mm(), 1) + "." + level);
    }

    private double line_mm() {
        return size_mm * 0.06;
    }

    /** From along and over the board line, x counted from the bridge. */
    private Point at(double along_mm, double over_mm) {
        return new Point(
                along_mm * Math.cos(slope_rad) - over_mm * Math.sin(slope_rad),
                shape.inputs().projection_mm() + along_mm * Math.sin(slope_rad) + over_mm * Math.cos(slope_rad));
    }

    private void strings() {
        int last = shape.strings().size() - 1;
        for (int string : new int[] {0, last}) {
            SeatedString seated = shape.strings().get(string);
            double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
            Stroke stroke = Stroke.of(string == 0 ? Ink.INK : Ink.FAINT, Math.max(line_mm(), 2 * radius_mm));
            Point bridge = at(0, seated.underside().mm() + radius_mm);
            sketch.line(
                    at(
                            -shape.inputs().speakingLength_mm(),
                            seated.nutUnderside().mm() + radius_mm),
                    bridge,
                    stroke);
            fret().ifPresent(point -> sketch.line(bridge, point, stroke));
        }
    }

    /** The tailpiece fret, where both after-length and height are known. */
    private Optional<Point> fret() {
        return tail.bench()
                .find(BenchReading.AFTER_LENGTH)
                .flatMap(along_mm ->
                        tail.bench().find(BenchReading.TAIL_HEIGHT).map(height_mm -> new Point(along_mm, height_mm)));
    }

    private void bridge() {
        double top_mm = shape.highest().mm();
        double foot_mm = top_mm * 0.13;
        sketch.area(
                List.of(
                        new Point(-foot_mm / 2, 0),
                        new Point(foot_mm / 2, 0),
                        new Point(foot_mm / 6, top_mm),
                        new Point(-foot_mm / 6, top_mm)),
                Stroke.of(Ink.ACCENT, line_mm() * 1.3),
                Ink.PAPER);
    }

    private void boardEnd() {
        double boardEnd_mm = shape.inputs().board().length_mm() - shape.inputs().speakingLength_mm();
        Point end = at(boardEnd_mm, 0);
        String clearances = Figures.fixed(shape.inputs().boardEndClearance_mm().bass_mm(), 1) + " / "
                + Figures.fixed(shape.inputs().boardEndClearance_mm().treble_mm(), 1) + " over the board end";
        small(
                clearances,
                end.moved(
                        0, 1.6 * size_mm + shape.inputs().boardEndClearance_mm().bass_mm()),
                Anchor.END);
        double x_mm = boardEnd_mm * 0.55;
        DimensionLine dimension = new DimensionLine(sketch, size_mm, line_mm(), Ink.FAINT);
        dimension.uprightWithLevelWords(
                x_mm,
                0,
                at(x_mm, 0).y_mm(),
                shape.inputs().projection_mm() * 0.4,
                "projection " + Figures.fixed(shape.inputs().projection_mm(), 1));
        dimension.level(
                -shape.inputs().speakingLength_mm(),
                0,
                -3 * size_mm,
                "string " + Figures.fixed(shape.inputs().speakingLength_mm(), 1));
    }

    private void behind() {
        fret().ifPresent(point -> {
            sketch.line(
                    point,
                    point.moved(0.14 * shape.inputs().speakingLength_mm(), -0.4 * point.y_mm()),
                    Stroke.of(Ink.INK, line_mm() * 4));
            new DimensionLine(sketch, size_mm, line_mm(), Ink.FAINT)
                    .level(0, point.x_mm(), -3 * size_mm, Figures.fixed(point.x_mm(), 1));
            small("after-length", new Point(point.x_mm() / 2, -4.4 * size_mm), Anchor.MIDDLE);
        });
        tail.findBreak(0).ifPresent(bend -> {
            String angle = Figures.fixed(bend.findStringAngle_deg().orElseThrow(), 1) + "°";
            Point over = new Point(0, shape.highest().mm() + 1.2 * size_mm);
            sketch.words(angle, over, size_mm * 1.15, Anchor.MIDDLE, Face.SANS_STRONG, Ink.ACCENT);
        });
    }

    private void small(String words, Point at, Anchor anchor) {
        sketch.words(words, at, size_mm, anchor, Face.SERIF_ITALIC, Ink.FAINT);
    }
}
