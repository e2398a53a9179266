package afterlength.start.verbs;

import afterlength.craft.access.Section;
import afterlength.craft.access.SectionQuestion;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.List;
import java.util.Optional;

/** A hole and a bar, as they are written in a document; to be turned into a question only when there are no problems. */
record PassageDocument(
        List<Point> points,
        double width_mm,
        double thickness_mm,
        double clearance_mm,
        double plate_mm,
        boolean plateAssumed) {
    /** An invented hole of thirty points, about as long as that of a small violin. */
    static final String EXAMPLE = """
            {
              "outline_mm": [[3.5,0], [6,1], [7,3.5], [6,6], [3.9,7], [5.6,12], [8.6,18], [10.6,26], [12,34], [13.4,36],
                [12.6,38], [14,45], [16.4,51], [20,55], [24,57.2], [27,61], [26.4,65], [23,67.6], [19,66.6], [17,63],
                [18,59.6], [14,56.4], [10.4,51], [8.2,44], [6.8,38], [5.2,36], [6.2,34], [4.8,26], [2,16], [0.2,8], [0,3.4],
                [1.2,1]],
              "section_mm": { "width": 12, "thickness": 5 },
              "clearance_mm": 0.3,
              "plate_mm": 2.7
            }
            """;

    private static final int MOST_POINTS = 2000;
    private static final Range PLACE = Range.between(-5000, 5000, "mm");
    private static final Range SIDE = Range.between(0.5, 500, "mm");
    private static final Range CLEARANCE = Range.between(0, 10, "mm");
    private static final Range PLATE = Range.between(0, 50, "mm");

    static PassageDocument read(DocumentReader document) {
        List<Point> points = document.get("outline_mm").asList(3, MOST_POINTS).stream()
                .map(PassageDocument::point)
                .toList();
        DocumentReader section = document.get("section_mm").asObject();
        Optional<DocumentValue> plate = document.find("plate_mm");
        return new PassageDocument(
                points,
                section.get("width").asNumber(SIDE),
                section.get("thickness").asNumber(SIDE),
                document.find("clearance_mm")
                        .map(clearance -> clearance.asNumber(CLEARANCE))
                        .orElse(SectionQuestion.USUAL_CLEARANCE_MM),
                plate.map(given -> given.asNumber(PLATE)).orElse(SectionQuestion.USUAL_PLATE_MM),
                plate.isEmpty());
    }

    /** Where a point could not be read a harmless one stands in: the problem is noted already. */
    private static Point point(DocumentValue pair) {
        List<DocumentValue> places = pair.asList(2, 2);
        if (places.isEmpty()) {
            return Point.of(0, 0);
        }
        double x_mm = places.get(0).asNumber(PLACE);
        double y_mm = places.get(1).asNumber(PLACE);
        return Double.isFinite(x_mm + y_mm) ? Point.of(x_mm, y_mm) : Point.of(0, 0);
    }

    SectionQuestion question() {
        return new SectionQuestion(new Outline(points), new Section(width_mm, thickness_mm), clearance_mm, plate_mm);
    }
}
