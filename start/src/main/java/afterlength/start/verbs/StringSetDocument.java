package afterlength.start.verbs;

import afterlength.craft.setup.StringBreak;
import afterlength.craft.setup.StringMass;
import afterlength.craft.setup.StringOrder;
import afterlength.craft.setup.StringSet;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.List;
import java.util.Optional;

/** A set of strings at its pitch, as it is written in a document; what the numbers may be is judged in {@code craft}. */
final class StringSetDocument {
    /** Far more than any instrument has; the list must end somewhere. */
    private static final int MOST_STRINGS = 100;

    private StringSetDocument() {}

    static StringSet read(DocumentReader document) {
        return new StringSet(
                number(document, "speaking_length_mm", "mm"),
                document.find("a4_Hz")
                        .map(pitch -> pitch.asNumber(Range.any("Hz")))
                        .orElse(StringSet.USUAL_A4_Hz),
                document.get("strings").asList(1, MOST_STRINGS).stream()
                        .map(DocumentValue::asObject)
                        .map(StringSetDocument::string)
                        .toList(),
                overBridge(document));
    }

    private static StringOrder string(DocumentReader string) {
        return new StringOrder(string.get("note").asText(), mass(string));
    }

    private static StringMass mass(DocumentReader string) {
        boolean density = string.hasAny("linear_density_g_m");
        boolean solid = string.hasAny("diameter_mm", "density_kg_m3");
        boolean tension = string.hasAny("tension_N");
        if (List.of(density, solid, tension).stream().filter(given -> given).count() != 1) {
            string.refuse(
                    "",
                    null,
                    "A string needs one of linear_density_g_m, diameter_mm with density_kg_m3, or tension_N. Give one of them.");
        }
        if (density) {
            return new StringMass.LinearDensity(number(string, "linear_density_g_m", "g/m"));
        }
        return solid
                ? new StringMass.Solid(number(string, "diameter_mm", "mm"), number(string, "density_kg_m3", "kg/m³"))
                : new StringMass.FromTension(tension ? number(string, "tension_N", "N") : Double.NaN);
    }

    private static StringBreak overBridge(DocumentReader document) {
        Optional<Double> angle_deg = document.find("string_angle_deg").map(angle -> angle.asNumber(Range.any("°")));
        Optional<StringBreak> heights =
                document.find("break").map(DocumentValue::asObject).map(StringSetDocument::heights);
        if (angle_deg.isPresent() && heights.isPresent()) {
            document.refuse(
                    "/string_angle_deg",
                    angle_deg.get(),
                    "The break over the bridge is given twice, as string_angle_deg and as break. Leave out one of them.");
        }
        return heights.or(() -> angle_deg.map(StringBreak.Angle::new)).orElseGet(StringBreak.Unknown::new);
    }

    private static StringBreak heights(DocumentReader heights) {
        return new StringBreak.Heights(
                number(heights, "after_length_mm", "mm"),
                number(heights, "tail_height_mm", "mm"),
                number(heights, "bridge_height_mm", "mm"),
                number(heights, "neck_slope_deg", "°"));
    }

    private static double number(DocumentReader document, String key, String unit) {
        return document.get(key).asNumber(Range.any(unit));
    }
}
