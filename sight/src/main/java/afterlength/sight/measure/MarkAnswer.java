package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import java.util.List;

/** What a mark measures, or why nothing is said of it. Places lie on the card's axes: x right, y down. */
public sealed interface MarkAnswer {
    String id();

    record Line(String id, double length_mm, Terms terms_mm, List<Point> places) implements MarkAnswer {}

    record Area(String id, double area_mm2, Terms terms_mm2, double outline_mm, List<Point> places)
            implements MarkAnswer {}

    record Place(String id, Point place, Terms terms_mm) implements MarkAnswer {}

    /** The value is not given: it would be a guess. */
    record NotMeasured(String id, String reason) implements MarkAnswer {}
}
