package afterlength.workshop.retouch;

import afterlength.craft.colour.LineVisibility;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.ArrayList;
import java.util.List;

/** The line across, before (broken) and afterwards (strong), over the band of what untouched varnish reads. */
final class AcrossDrawing {
    private static final double WIDTH_MM = 150;
    private static final double HEIGHT_MM = 60;
    private static final double LEFT_MM = 14;
    private static final double BOTTOM_MM = 10;
    private static final double LETTER_MM = 3.2;

    private final MendedLine line;
    private final Sketch sketch = new Sketch();
    private final double most;

    private AcrossDrawing(MendedLine line) {
        this.line = line;
        double highest = Math.max(highest(line.before()), highest(line.after()));
        most = Math.max(
                2,
                Math.ceil(Math.max(
                        highest, Math.max(line.before().control(), line.after().control()))));
    }

    static Drawing of(MendedLine line) {
        return new AcrossDrawing(line).draw();
    }

    private static double highest(LineSight sight) {
        return sight.acrossValues().stream().mapToDouble(one -> one).max().orElse(0);
    }

    private Drawing draw() {
        double untouched = line.after().control();
        sketch.area(List.of(at(-3, 0), at(3, 0), at(3, untouched), at(-3, untouched)), null, Ink.BAND);
        for (double value = 0; value <= most; value += most > 6 ? 2 : 1) {
            sketch.line(at(-3, value), at(3, value), Stroke.of(Ink.FAINT, 0.12));
            words(Figures.fixed(value, 0), at(-3, value).moved(-2, -1.1), Anchor.END);
        }
        for (int mm = -3; mm <= 3; mm++) {
            sketch.line(at(mm, 0), at(mm, 0).moved(0, -1.2), Stroke.of(Ink.INK, 0.2));
            words(Figures.fixed(mm, 0) + (mm == 3 ? " mm" : ""), at(mm, 0).moved(0, -5), Anchor.MIDDLE);
        }
        sketch.curve(curve(line.before()), Stroke.dashed(Ink.INK, 0.5, 2, 1.2));
        sketch.curve(curve(line.after()), Stroke.of(Ink.ACCENT, 0.8));
        words("ΔE00", new Point(LEFT_MM, BOTTOM_MM + HEIGHT_MM + 2), Anchor.START);
        return sketch.drawing("Across the line", line.answer());
    }

    private List<Point> curve(LineSight sight) {
        List<Point> curve = new ArrayList<>();
        List<Double> across = sight.acrossValues();
        for (int n = 0; n < across.size(); n++) {
            curve.add(at(n * LineVisibility.STEP_MM - LineVisibility.FARTHEST_MM, across.get(n)));
        }
        return curve;
    }

    private void words(String words, Point at, Anchor anchor) {
        sketch.words(words, at, LETTER_MM, anchor, Face.SANS, Ink.INK);
    }

    private Point at(double off_mm, double value) {
        double part = (off_mm + LineVisibility.FARTHEST_MM) / (2 * LineVisibility.FARTHEST_MM);
        return new Point(LEFT_MM + WIDTH_MM * part, BOTTOM_MM + HEIGHT_MM * value / most);
    }
}
