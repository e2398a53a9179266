package afterlength.start.verbs;

import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.Crown;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.TemplateCrown;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.List;
import java.util.Optional;

/** The crown, which is written in one of three ways. */
final class CrownDocument {
    private static final String EVEN_PLAY = "even play";
    private static final int MOST_POINTS = 10_000;
    private static final Range MILLIMETRES = Range.any("mm");

    private CrownDocument() {}

    /** The crown; a radius of NaN where none could be read. */
    static Crown read(DocumentValue crown) {
        if (crown.isText()) {
            return crown.asOneOf(List.of(EVEN_PLAY), word -> word)
                    .<Crown>map(word -> new EvenPlayCrown())
                    .orElse(new RadiusCrown(Double.NaN));
        }
        return read(crown.asObject());
    }

    private static Crown read(DocumentReader crown) {
        Optional<DocumentValue> radius = crown.find("radius_mm");
        Optional<DocumentValue> template = crown.find("template_mm");
        if (radius.isPresent() == template.isPresent()) {
            crown.refuse(
                    "",
                    radius.isPresent() ? "radius_mm and template_mm" : null,
                    "crown needs either radius_mm or template_mm. Give one of them, or \"" + EVEN_PLAY
                            + "\" instead of the braces.");
        }
        return template.filter(points -> radius.isEmpty())
                .map(CrownDocument::template)
                .orElseGet(() -> new RadiusCrown(
                        radius.map(value -> value.asNumber(MILLIMETRES)).orElse(Double.NaN)));
    }

    private static Crown template(DocumentValue points) {
        return new TemplateCrown(
                points.asList(2, MOST_POINTS).stream().map(CrownDocument::point).toList());
    }

    private static CrossPoint point(DocumentValue value) {
        List<Double> pair = value.asList(2, 2).stream()
                .map(number -> number.asNumber(MILLIMETRES))
                .toList();
        return pair.size() == 2 ? new CrossPoint(pair.get(0), pair.get(1)) : new CrossPoint(Double.NaN, Double.NaN);
    }
}
