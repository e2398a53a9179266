package afterlength.workshop.agreement;

import afterlength.workshop.desk.Typed;

/** Reads a clamp from what was typed. */
final class ClampForm {
    private ClampForm() {}

    static ShopClamp read(Typed typed) {
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
                0,
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
