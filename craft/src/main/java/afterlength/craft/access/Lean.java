package afterlength.craft.access;

import afterlength.craft.units.Angle;
import java.util.Optional;

/**
 * How far a bar may lean while it goes through a plate. A bar of thickness t that leans by φ needs a section of t/cos φ + p·tan φ in
 * a plate of thickness p. Where L is the most the hole allows, L·cos φ − p·sin φ = t, and with R² = L² + p² the lean is
 * arccos(t/R) − arctan(p/L).
 *
 * <p>The bar leans in one plane and runs on straight on both sides; the edge of the hole is square to the plate.
 */
public final class Lean {
    private Lean() {}

    /** None when the bar does not even pass upright. */
    public static Optional<Angle> find(double bar_mm, double allowed_mm, double plate_mm) {
        if (bar_mm > allowed_mm) {
            return Optional.empty();
        }
        double slant_mm = Math.hypot(allowed_mm, plate_mm);
        return Optional.of(Angle.ofRad(Math.acos(bar_mm / slant_mm) - Math.atan2(plate_mm, allowed_mm)));
    }

    /** What a bar needs when it leans. */
    public static double needed_mm(double bar_mm, Angle lean, double plate_mm) {
        return bar_mm / Math.cos(lean.rad()) + plate_mm * Math.tan(lean.rad());
    }
}
