package afterlength.craft.colour;

import org.hipparchus.special.Erf;

/** The area under the normal curve. */
final class BellCurve {
    private BellCurve() {}

    /** Between two places counted in standard deviations. */
    static double between(double from, double to) {
        return 0.5 * Erf.erf(from / Math.sqrt(2), to / Math.sqrt(2));
    }
}
