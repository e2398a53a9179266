package afterlength.workshop.agreement;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.Map;

/** Reads a clamp from what was typed. */
final class ClampForm {
    private ClampForm() {}

    static Typed known(ShopClamp clamp) {
        return Typed.known(Map.of(
                "name", clamp.name(),
                "throat_mm", Figures.typed(clamp.throatMm()),
                "jaw_length_mm", Figures.typed(clamp.jawLengthMm()),
                "jaw_width_mm", Figures.typed(clamp.jawWidthMm()),
                "jaw_height_mm", Figures.typed(clamp.jawHeightMm()),
                "arm_mm", Figures.typed(clamp.armMm()),
                "arm_width_mm", Figures.typed(clamp.armWidthMm())));
    }

    /** The clamp as typed, under the number it has; 0 for another one. */
    static ShopClamp read(Typed typed, long id) {
        String name = typed.required("name", "The name of the clamp", 80);
        double throat_mm = typed.requiredDecimal("throat_mm", "The throat", "mm", 1, 400);
        double jaw_mm = typed.requiredDecimal("jaw_length_mm", "The length of the jaw", "mm", 0.5, 100);
        if (throat_mm <= jaw_mm / 2) {
            typed.note(
                    "throat_mm",
                    "The throat is " + typed.raw("throat_mm")
                            + " mm, no longer than half the jaw. Measure from the middle of " + "the jaw to the post.");
        }
        return new ShopClamp(
                id,
                name.isBlank() ? "?" : name,
                throat_mm,
                jaw_mm,
                typed.requiredDecimal("jaw_width_mm", "The width of the jaw", "mm", 0.5, 100),
                typed.requiredDecimal("jaw_height_mm", "The height of the jaw", "mm", 0.2, 50),
                typed.requiredDecimal("arm_mm", "The thickness of arm and post", "mm", 0.2, 50),
                typed.requiredDecimal("arm_width_mm", "The width of arm and post", "mm", 0.2, 50),
                false);
    }
}
