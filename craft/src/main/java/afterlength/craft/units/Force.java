package afterlength.craft.units;

/** A force in newtons. */
public record Force(double newton) {
    /** Standard gravity, exact by definition. Source: docs/sources.md#si-brochure. */
    public static final double STANDARD_GRAVITY_N_PER_KG = 9.80665;

    public Force {
        Finite.require("force", newton, "N");
    }

    public static Force ofNewton(double newton) {
        return new Force(newton);
    }

    /** The mass in kilograms whose weight under standard gravity is this force. */
    public double kgf() {
        return newton / STANDARD_GRAVITY_N_PER_KG;
    }
}
