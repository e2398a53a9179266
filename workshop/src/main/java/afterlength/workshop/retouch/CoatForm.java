package afterlength.workshop.retouch;

import afterlength.craft.colour.Recipe;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a coat that was laid. */
final class CoatForm {
    private CoatForm() {}

    /** What the form is filled with: three quarters at first, all that is missing later. */
    static Map<String, String> offered(RetouchCase one, Mix mix, String hand) {
        String isolating = one.begun() ? one.lastCoat().isolating() : "";
        String undone = mix.lines().isEmpty() ? "" : mix.lines().get(0).colour().reversibleWith();
        return Map.of(
                "part_pct",
                Figures.plain(100 * part(one)),
                "isolating",
                isolating,
                "reversible_with",
                one.begun() ? one.lastCoat().reversibleWith() : undone,
                "hand",
                hand);
    }

    private static double part(RetouchCase one) {
        return one.begun() ? 1 : Recipe.FIRST_COAT;
    }

    /** Null when a problem was noted. */
    static @Nullable CoatToLay read(Typed typed, RetouchCase one, Optional<Mix> mix, Instant now) {
        double part_pct = typed.requiredDecimal("part_pct", "The part of the film that was laid", "%", 1, 150);
        String isolating = typed.required("isolating", "The isolating layer", 200);
        String undone = typed.required("reversible_with", "What takes it off again", 300);
        String remark = typed.text("remark", "The remark", 2000);
        String hand = typed.required("hand", "Whose hands", 60);
        if (mix.isEmpty()) {
            typed.note(
                    "recipe",
                    "This recipe does not stand any more: a coat was laid or measured meanwhile. Choose one of those shown.");
        }
        if (!typed.sound() || mix.isEmpty()) {
            return null;
        }
        return new CoatToLay(
                one.retouch().id(),
                mix.get().parts(part_pct / 100),
                MixWords.material(mix.get(), part_pct / 100),
                isolating,
                undone,
                remark,
                now,
                hand);
    }
}
