package afterlength.start.verbs;

import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.measure.Height;
import afterlength.sight.measure.Mark;
import afterlength.sight.measure.MarkKind;
import afterlength.sight.measure.PhotoRequest;
import afterlength.sight.measure.Print;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The marks set on a photograph, and the card that lies in it. To be used only while the document has no problems. */
public final class MeasureDocument {
    private static final int MOST_MARKS = 1000;
    private static final int MOST_POINTS = 5000;

    /** No picture that is taken has a longer edge. */
    private static final double LONGEST_EDGE_PX = 30_000;

    /** Deeper than any instrument lies under a card, and higher than any arch or scroll over it. */
    private static final double LOWEST_MM = -300;

    private static final double HIGHEST_MM = 300;

    /** The height classes by the words a person uses. */
    private static final Map<String, Height> CLASSES = classes();

    private final DocumentReader document;
    private final Optional<String> card;
    private final Print print;
    private final List<Mark> marks = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    private MeasureDocument(DocumentReader document) {
        this.document = document;
        List<String> cards =
                Arrays.stream(Card.values()).map(Card::word).distinct().toList();
        card = document.get("card").asOneOf(cards, word -> word);
        print = document.find("check_lines_mm").map(MeasureDocument::print).orElse(Print.UNCHECKED);
        document.get("marks").asList(0, MOST_MARKS).stream()
                .map(DocumentValue::asObject)
                .forEach(this::readMark);
    }

    private static Map<String, Height> classes() {
        Map<String, Height> classes = new LinkedHashMap<>();
        classes.put("in plane", Height.IN_PLANE);
        classes.put("edge", Height.EDGE);
        classes.put("half", Height.HALF);
        classes.put("top", Height.TOP);
        return classes;
    }

    public static MeasureDocument read(DocumentReader document) {
        return new MeasureDocument(document);
    }

    public PhotoRequest request() {
        return PhotoRequest.of(card, print);
    }

    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    DocumentReader document() {
        return document;
    }

    private static Print print(DocumentValue lines) {
        Range range = Range.between(Print.SHORTEST_CHECK_LINE_MM, Print.LONGEST_CHECK_LINE_MM, "mm")
                .because("printers scale by a few per cent at most");
        List<Double> lengths = lines.asList(2, 2).stream()
                .map(length -> length.asNumber(range))
                .toList();
        boolean read = lengths.size() == 2 && lengths.stream().allMatch(Double::isFinite);
        return read ? Print.checked(lengths.get(0), lengths.get(1)) : Print.UNCHECKED;
    }

    private void readMark(DocumentReader mark) {
        String id = mark.get("id").asText();
        if (!names.add(id) && !id.isEmpty()) {
            mark.refuse("/id", id, "There are two marks called \"" + id + "\". Give each its own id.");
        }
        Optional<MarkKind> kind = mark.get("kind").asOneOf(List.of(MarkKind.values()), MarkKind::word);
        int fewest = kind.map(MarkKind::fewest).orElse(1);
        int most = kind.filter(MarkKind.POINT::equals).isPresent() ? 1 : MOST_POINTS;
        List<Pixel> pixels = mark.get("pixels").asList(fewest, most).stream()
                .map(MeasureDocument::pixel)
                .toList();
        Height height = height(mark);
        boolean read = !pixels.isEmpty() && pixels.stream().allMatch(MeasureDocument::isRead);
        if (kind.isPresent() && read) {
            marks.add(new Mark(id, kind.get(), pixels, height));
        }
    }

    private static Pixel pixel(DocumentValue point) {
        Range range = Range.between(0, LONGEST_EDGE_PX, "pixels");
        List<Double> pair = point.asList(2, 2).stream()
                .map(number -> number.asNumber(range))
                .toList();
        return pair.size() == 2 ? new Pixel(pair.get(0), pair.get(1)) : new Pixel(Double.NaN, Double.NaN);
    }

    private static boolean isRead(Pixel pixel) {
        return Double.isFinite(pixel.x()) && Double.isFinite(pixel.y());
    }

    private static Height height(DocumentReader mark) {
        Optional<DocumentValue> word = mark.find("height");
        Optional<DocumentValue> number = mark.find("height_mm");
        if (word.isPresent() && number.isPresent()) {
            mark.refuse("/height", null, "A mark has either height or height_mm. Leave out one of them.");
        }
        if (number.isPresent()) {
            double height_mm = number.get().asNumber(Range.between(LOWEST_MM, HIGHEST_MM, "mm"));
            return Double.isFinite(height_mm) ? Height.given(height_mm) : Height.UNKNOWN;
        }
        return word.flatMap(value -> value.asOneOf(List.copyOf(CLASSES.keySet()), text -> text))
                .map(CLASSES::get)
                .orElse(Height.UNKNOWN);
    }
}
