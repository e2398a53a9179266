package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.sight.measure.Height;
import afterlength.sight.measure.Mark;
import afterlength.sight.measure.MarkAnswer;
import afterlength.sight.measure.MarkKind;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.Terms;
import afterlength.workshop.desk.Figures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a mark measures in a photograph with a card, or why nothing is said of it.
 *
 * @param reason the terms of the ±, or why there are no millimetres
 */
record MarkReading(MarkSize size, String reason) {
    private static final String NAME = "mark";

    static MarkReading of(MeasuredPhoto photo, MarkTool tool, List<Pixel> points, Height height) {
        MarkAnswer answer = photo.measure(new Mark(NAME, tool.kind(), points, height));
        if (answer instanceof MarkAnswer.Line line) {
            return new MarkReading(lengthOf(line, null), terms(line.terms_mm(), "mm"));
        }
        if (answer instanceof MarkAnswer.Area area) {
            return new MarkReading(sizeOf(photo, points, height, area), terms(area.terms_mm2(), "mm²"));
        }
        return answer instanceof MarkAnswer.NotMeasured none
                ? new MarkReading(MarkSize.NONE, none.reason())
                : new MarkReading(MarkSize.NONE, "A point has a place and no size.");
    }

    private static MarkSize sizeOf(MeasuredPhoto photo, List<Pixel> points, Height height, MarkAnswer.Area area) {
        Mark across = new Mark(NAME, MarkKind.LINE, farthest(points, area), height);
        return photo.measure(across) instanceof MarkAnswer.Line line ? lengthOf(line, area) : MarkSize.NONE;
    }

    private static MarkSize lengthOf(MarkAnswer.Line line, MarkAnswer.@Nullable Area area) {
        return new MarkSize(
                line.length_mm(),
                line.terms_mm().plusMinus(),
                area == null ? null : Double.valueOf(area.area_mm2()),
                area == null ? null : Double.valueOf(area.terms_mm2().plusMinus()));
    }

    /** The two points of an outline that lie furthest from each other on the instrument, not in the picture. */
    private static List<Pixel> farthest(List<Pixel> points, MarkAnswer.Area area) {
        int one = 0;
        int other = 0;
        double longest_mm = -1;
        for (int n = 0; n < points.size(); n++) {
            for (int m = n + 1; m < points.size(); m++) {
                double apart_mm =
                        area.places().get(n).distanceTo_mm(area.places().get(m));
                if (apart_mm > longest_mm) {
                    longest_mm = apart_mm;
                    one = n;
                    other = m;
                }
            }
        }
        return List.of(points.get(one), points.get(other));
    }

    private static String terms(Terms terms, String unit) {
        return "Of the ±, twice each: setting the mark " + twice(terms.picking()) + ", camera from the card "
                + twice(terms.card()) + ", height " + twice(terms.height()) + ", print " + twice(terms.print()) + " "
                + unit + ".";
    }

    private static String twice(double deviation) {
        return Figures.fixed(2 * deviation, 2);
    }
}
