package afterlength.craft.wood;

/**
 * The moisture of a plate that follows changing air, reading by reading: {@code m ← m + (EMC − m)·(1 − exp(−Δt/τ))}, exact
 * where the air stands still between two readings. It starts in equilibrium with the first air, which nobody knows; the memory
 * of a wrong start fades with τ, to a twentieth after three. Left out: the fast part of the diffusion and everything
 * {@link PlateResponse} leaves out.
 */
public final class PlateFollower {
    private final double slow_h;
    private double moisture_pct = Double.NaN;

    public PlateFollower(PlateResponse response) {
        slow_h = response.slow_h();
    }

    /** Begins anew, in equilibrium with this air. */
    public double start(double equilibrium_pct) {
        moisture_pct = equilibrium_pct;
        return moisture_pct;
    }

    /** The plate after it stood for a time in air of this equilibrium. */
    public double follow(double equilibrium_pct, double time_h) {
        if (Double.isNaN(moisture_pct)) {
            throw new IllegalStateException("a plate that follows must be started first");
        }
        moisture_pct += (equilibrium_pct - moisture_pct) * -Math.expm1(-time_h / slow_h);
        return moisture_pct;
    }
}
