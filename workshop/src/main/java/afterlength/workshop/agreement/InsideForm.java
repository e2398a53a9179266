package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads what stands inside, and how the traced axes lie. Everything may be left empty. */
final class InsideForm {
    private InsideForm() {}

    static Inside read(Typed typed) {
        Long photograph = photograph(typed);
        return new Inside(
                decimal(typed, "grain_line_deg", "The direction of the plate's grain", "°", -180, 180, 90),
                line(typed, "bar", "The line of the bar", 2),
                decimal(typed, "bar_mm", "The breadth of the bar", "mm", 1, 60, Inside.UNTOLD.barMm()),
                line(typed, "post", "The place of the post", 1),
                decimal(typed, "post_mm", "The diameter of the post", "mm", 1, 40, Inside.UNTOLD.postMm()),
                line(typed, "lining", "The line of the lining", 2),
                decimal(typed, "lining_mm", "The breadth of the lining", "mm", 0.5, 40, Inside.UNTOLD.liningMm()),
                photograph,
                photograph == null
                        ? 0
                        : decimal(typed, "photograph_height_mm", "The height of the traced hole", "mm", 0, 200, 0));
    }

    private static double decimal(
            Typed typed, String name, String label, String unit, double lowest, double highest, double otherwise) {
        Double value = typed.decimal(name, label, unit, lowest, highest);
        return value == null ? otherwise : value;
    }

    private static String line(Typed typed, String name, String label, int least) {
        return typed.raw(name).isBlank() ? "" : TracedPoints.typed(TracedPoints.read(typed, name, label, least));
    }

    private static @Nullable Long photograph(Typed typed) {
        String id = typed.raw("photograph").strip();
        return id.matches("\\d{1,15}") ? Long.valueOf(id) : null;
    }

    static void put(Map<String, List<String>> typed, Inside inside) {
        typed.put("grain_line_deg", List.of(Figures.typed(inside.grainLineDeg())));
        typed.put("bar", List.of(inside.bar()));
        typed.put("bar_mm", List.of(Figures.typed(inside.barMm())));
        typed.put("post", List.of(inside.post()));
        typed.put("post_mm", List.of(Figures.typed(inside.postMm())));
        typed.put("lining", List.of(inside.lining()));
        typed.put("lining_mm", List.of(Figures.typed(inside.liningMm())));
        Long photograph = inside.photographId();
        typed.put("photograph", List.of(photograph == null ? "" : Long.toString(photograph)));
        typed.put("photograph_height_mm", List.of(Figures.typed(inside.photographHeightMm())));
    }
}
