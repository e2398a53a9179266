package afterlength.craft.wood;

import afterlength.craft.units.Length;

/**
 * How fast the moisture of a plate follows the air, by diffusion through its thickness {@code L} (plane sheet, one diffusivity
 * {@code D}). With {@code Fo = D·t/L²} the part of the change that has been made is
 *
 * <pre>  1 − (8/π²)·Σ exp(−(2n+1)²·π²·Fo)/(2n+1)²</pre>
 *
 * <p>A sealed face counts as a plate of twice the thickness. The slow part dies away as {@code exp(−t/τ)}, {@code τ =
 * L²/(π²·D)}. Through a plate cut on the quarter moisture moves tangentially, through one cut on the slab radially. These times
 * are the shortest possible: the film of still air, varnish, a case and hysteresis slow the plate and are left out. Valid for
 * spruce; other woods borrow its diffusivity. Source: docs/sources.md#spruce-diffusion; Fick's law, docs/sources.md#plane-sheet.
 */
public final class PlateResponse {
    /** Through a slab-cut plate. */
    static final double RADIAL_M2_S = 0.94e-10;

    /** Through a quarter-cut plate. */
    static final double TANGENTIAL_M2_S = 1.00e-10;

    /** {@code Fo} when half of the change is made; the smaller terms of the series weigh below 1e-6 there. */
    private static final double HALF = 0.049183;

    private static final double NINE_TENTHS = 0.212021;

    /** Below this {@code Fo} the short-time form is exact to the last digit shown; above, few terms of the series are needed. */
    private static final double EARLY = 0.01;

    private static final int TERMS = 40;

    private final double travelled_m;
    private final double diffusivity_m2_s;

    private PlateResponse(double travelled_m, double diffusivity_m2_s) {
        this.travelled_m = travelled_m;
        this.diffusivity_m2_s = diffusivity_m2_s;
    }

    public static PlateResponse of(Length thickness, Cut cut, OpenFaces open) {
        if (!(thickness.mm() > 0)) {
            throw new IllegalArgumentException("thickness " + thickness.mm() + " mm is not greater than 0 mm");
        }
        double travelled_m = thickness.mm() / 1000 * (open == OpenFaces.BOTH ? 1 : 2);
        return new PlateResponse(travelled_m, cut == Cut.QUARTER ? TANGENTIAL_M2_S : RADIAL_M2_S);
    }

    /** The part of a sudden change that the plate has made after a time, 0 to 1. */
    public double partMade(double time_h) {
        double fourier = diffusivity_m2_s * time_h * 3600 / (travelled_m * travelled_m);
        if (fourier < EARLY) {
            return 4 * Math.sqrt(Math.max(0, fourier) / Math.PI);
        }
        double left = 0;
        for (int term = 0; term < TERMS; term++) {
            double odd = 2.0 * term + 1;
            left += Math.exp(-odd * odd * Math.PI * Math.PI * fourier) / (odd * odd);
        }
        return 1 - 8 / (Math.PI * Math.PI) * left;
    }

    public double half_h() {
        return hours(HALF);
    }

    public double nineTenths_h() {
        return hours(NINE_TENTHS);
    }

    /** Time constant of the slow part: what a first-order filter of a logger series uses. */
    public double slow_h() {
        return hours(1 / (Math.PI * Math.PI));
    }

    private double hours(double fourier) {
        return fourier * travelled_m * travelled_m / diffusivity_m2_s / 3600;
    }
}
