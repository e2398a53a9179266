package afterlength.workshop.examination;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The marks of one picture as a page of W3C Web Annotations (JSON-LD): each aims at the picture with an SVG selector and carries its
 * words; what was measured stands beside them as a quantity of schema.org, since the annotation model has none of its own.
 */
final class MarkAnnotations {
    private final String house;
    private final MarkGround ground;
    private final String picture;

    /** The house is where the addresses of this shop begin. */
    MarkAnnotations(String house, MarkGround ground) {
        this(house, ground, house + ground.picture());
    }

    /** The picture lies under an address of its own, as in an archive. */
    MarkAnnotations(String house, MarkGround ground, String picture) {
        this.house = house;
        this.ground = ground;
        this.picture = picture;
    }

    String text(List<MarkEntry> entries) {
        return entries.stream()
                .map(this::annotation)
                .collect(Collectors.joining(
                        ",\n",
                        "{\"@context\":[\"http://www.w3.org/ns/anno.jsonld\",{\"schema\":\"http://schema.org/\"}],\"id\":"
                                + quoted(house + ground.page() + ".jsonld")
                                + ",\"type\":\"AnnotationPage\",\"items\":[\n",
                        "\n]}\n"));
    }

    private String annotation(MarkEntry entry) {
        DrawnMark mark = entry.mark();
        return "{\"id\":" + quoted(house + "/marks/" + mark.id())
                + ",\"type\":\"Annotation\",\"motivation\":\"describing\",\"created\":"
                + quoted(mark.writtenAt().toString())
                + ",\"creator\":{\"type\":\"Person\",\"name\":" + quoted(mark.hand())
                + "},\"body\":[{\"type\":\"TextualBody\",\"format\":\"text/plain\",\"language\":\"en\",\"value\":"
                + quoted(words(entry)) + "}" + quantities(mark.size())
                + "],\"target\":{\"source\":" + quoted(picture)
                + ",\"selector\":{\"type\":\"SvgSelector\",\"value\":" + quoted(mark.selector()) + "}}}";
    }

    private static String words(MarkEntry entry) {
        DrawnMark mark = entry.mark();
        Finding finding = entry.finding();
        return mark.tool().words()
                + (finding == null ? "" : "; " + finding.title())
                + (mark.size().known() ? "; " + mark.size().words() : "")
                + (mark.remark().isEmpty() ? "" : "; " + mark.remark());
    }

    private static String quantities(MarkSize size) {
        return quantity(size.size_mm(), size.plusMinus_mm(), "mm")
                + quantity(size.area_mm2(), size.areaPlusMinus_mm2(), "mm²");
    }

    private static String quantity(@Nullable Double value, @Nullable Double plusMinus, String unit) {
        return value == null || plusMinus == null
                ? ""
                : String.format(
                        Locale.ROOT,
                        ",{\"type\":\"schema:QuantitativeValue\",\"schema:value\":%.3f,\"schema:unitText\":\"%s\","
                                + "\"schema:description\":\"± %.3f %s, k = 2\"}",
                        value,
                        unit,
                        plusMinus,
                        unit);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ') {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
