package afterlength.workshop.glue;

import afterlength.craft.glue.Batch;
import afterlength.craft.glue.BloomScale;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** Reads a batch to make up; its mass is typed, or follows from the joints it is for. */
final class BatchForm {
    private static final double MOST_G = 5000;

    private BatchForm() {}

    static Typed usual(String hand) {
        return Typed.known(Map.of(
                "name", "hot hide glue",
                "water", "2",
                "bloom_scale", BloomScale.GLUE.name(),
                "form", "GROUND",
                "moisture_pct", "12",
                "film_mm", "0.2",
                "hand", hand));
    }

    static Optional<GlueBatch> read(Typed typed, String hand, Instant now) {
        String name = typed.required("name", "The name", 80);
        double water = typed.requiredDecimal("water", "The water for one part of glue", "parts", 0.5, 10);
        double moisture_pct = typed.requiredDecimal("moisture_pct", "The moisture of the dry glue", "%", 0, 30);
        Double strength_g = typed.decimal("strength_g", "The gram strength", "g", 1, 600);
        BloomScale scale = typed.choice("bloom_scale", "The scale of the gram strength", BloomScale.class);
        String remark = typed.text("remark", "The remark", 500);
        double total_g = total_g(typed, water);
        if (!typed.raw("form").equals("FLAKES") && !typed.raw("form").equals("GROUND")) {
            typed.note("form", "The form is not chosen; choose flakes or ground.");
        }
        if (!typed.sound() || scale == null) {
            return Optional.empty();
        }
        Batch batch = Batch.of(total_g, water, moisture_pct);
        return Optional.of(new GlueBatch(
                0,
                name,
                strength_g,
                scale,
                typed.raw("form").equals("FLAKES"),
                batch.dry_g(),
                batch.water_g(),
                moisture_pct,
                remark,
                hand,
                now));
    }

    private static double total_g(Typed typed, double water) {
        Double total_g = typed.decimal("total_g", "The mass of the batch", "g", 5, MOST_G);
        Double joints_cm2 = typed.decimal("joints_cm2", "The area of the joints", "cm²", 1, 5000);
        Double film_mm = typed.decimal("film_mm", "The film", "mm", 0.01, 2);
        if (total_g != null) {
            return total_g;
        }
        if (joints_cm2 == null || film_mm == null || Double.isNaN(water)) {
            if (typed.raw("total_g").isBlank() && typed.raw("joints_cm2").isBlank()) {
                typed.note(
                        "total_g",
                        "Neither mass nor joints are given. Write the mass of the batch, or the area of the joints.");
            }
            return Double.NaN;
        }
        return Math.max(5, Batch.needed_g(joints_cm2, film_mm, water));
    }
}
