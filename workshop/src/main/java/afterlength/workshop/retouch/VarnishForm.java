package afterlength.workshop.retouch;

import afterlength.craft.varnish.BatchAnswer;
import afterlength.craft.varnish.Ingredient;
import afterlength.craft.varnish.Part;
import afterlength.craft.varnish.VarnishBatch;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads a batch and a watched coat from what was typed. */
final class VarnishForm {
    static final int ROWS = 6;
    static final List<Choice> PARTS = Arrays.stream(Part.values())
            .map(part -> new Choice(part.name(), part.words()))
            .toList();

    /** Any number is let through to the arithmetic, which knows the permitted ranges. */
    private static final double ANY = 1e9;

    private static final double LONGEST_H = 2000;

    /** When nobody says it. */
    private static final LocalTime MORNING = LocalTime.of(9, 0);

    private VarnishForm() {}

    /** The ingredients; problems of the arithmetic stand beside their fields. */
    static List<Ingredient> ingredients(Typed typed) {
        List<Ingredient> all = new ArrayList<>();
        for (int n = 0; n < ROWS; n++) {
            String at = "ingredients/" + n + "/";
            if (!typed.raw(at + "name").isBlank() || !typed.raw(at + "mass_g").isBlank()) {
                all.add(ingredient(typed, at, n + 1));
            }
        }
        if (typed.sound() && VarnishBatch.of(all) instanceof BatchAnswer.Refused refused) {
            typed.note(refused.problems());
        }
        return all;
    }

    private static Ingredient ingredient(Typed typed, String at, int row) {
        String name = typed.required(at + "name", "The name of ingredient " + row, 80);
        double mass_g = typed.requiredDecimal(at + "mass_g", "The mass of ingredient " + row, "g", -ANY, ANY);
        double density =
                typed.requiredDecimal(at + "density_kg_m3", "The density of ingredient " + row, "kg/m³", -ANY, ANY);
        Part part = typed.choice(at + "part", "What ingredient " + row + " is", Part.class);
        return new Ingredient(name, mass_g, density, part == null ? Part.OTHER_SOLID : part);
    }

    static Varnish varnish(Typed typed, Instant now) {
        return new Varnish(
                0,
                typed.required("name", "The name of the batch", 120),
                typed.date("made_on", "The day it was made"),
                typed.text("remark", "The remark", 2000),
                false,
                now,
                typed.required("hand", "Whose hands", 60));
    }

    /** Null when a problem was noted. Air that nobody typed is what the logger read while the coat dried. */
    static @Nullable VarnishCoat coat(Typed typed, long varnishId, DryingAir logged, LocalDate today, Instant now) {
        LocalDate on = typed.date("laid_on", "The day it was laid");
        LocalTime at = time(typed);
        double dry_h = typed.requiredDecimal("touch_dry_h", "The time to dry to the touch", "h", 0.05, LONGEST_H);
        DryingAir.Mean air = air(typed, logged, (on == null ? today : on).atTime(at), dry_h);
        String remark = typed.text("remark", "The remark", 2000);
        String hand = typed.required("hand", "Whose hands", 60);
        return typed.sound() && air != null
                ? new VarnishCoat(
                        0,
                        varnishId,
                        null,
                        false,
                        on == null ? today : on,
                        dry_h,
                        air.temperature_C(),
                        air.humidity_pct(),
                        remark,
                        now,
                        hand)
                : null;
    }

    private static DryingAir.@Nullable Mean air(Typed typed, DryingAir logged, LocalDateTime laid, double dry_h) {
        boolean untyped = typed.raw("temperature_C").isBlank()
                && typed.raw("humidity_pct").isBlank();
        if (untyped && dry_h > 0) {
            Instant from = Days.instant(laid);
            DryingAir.Mean mean = logged.over(from, from.plusSeconds(Math.round(3600 * dry_h)))
                    .orElse(null);
            if (mean != null) {
                return mean;
            }
        }
        return new DryingAir.Mean(
                typed.requiredDecimal("temperature_C", "The temperature of the air", "°C", -10, 60),
                typed.requiredDecimal("humidity_pct", "The humidity of the air", "%", 0, 100));
    }

    private static LocalTime time(Typed typed) {
        String text = typed.raw("laid_at").strip();
        try {
            return text.isEmpty() ? MORNING : LocalTime.parse(text);
        } catch (DateTimeParseException none) {
            typed.note("laid_at", "The time it was laid is “" + text + "”; write it such as 14:30.");
            return MORNING;
        }
    }
}
