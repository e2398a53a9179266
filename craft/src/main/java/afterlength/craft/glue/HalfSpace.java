package afterlength.craft.glue;

import org.hipparchus.special.Erf;

/**
 * A thin hot film on wood so thick that its far side notices nothing. The film is one temperature throughout (its thickness {@code d}
 * carries {@code ρcd} of heat for each square metre); the wood carries heat away. With {@code τ = t·(kρc of the wood)/(ρcd of the
 * film)²} the excess of the film over the wood falls to
 *
 * <pre>  θ = exp(τ)·erfc(√τ)</pre>
 *
 * <p>For large {@code τ} the product of a huge and a tiny number is replaced by a continued fraction. Valid while {@code t <
 * 0.3·L²/α} in wood of thickness {@code L}. Source: docs/sources.md#thin-film, docs/sources.md#lumped-layer.
 */
final class HalfSpace {
    /** Above this argument the continued fraction is exact to fifteen digits with the terms below. */
    private static final double FRACTION_FROM = 4;

    private static final int FRACTION_TERMS = 60;

    private static final double TAU_HIGHEST = 1e12;

    private HalfSpace() {}

    /** The part of the excess that is left, 1 at the start. */
    static double excess(double tau) {
        return scaledComplement(Math.sqrt(tau));
    }

    /** {@code exp(x²)·erfc(x)}. */
    static double scaledComplement(double x) {
        return x < FRACTION_FROM ? Math.exp(x * x) * Erf.erfc(x) : fraction(x);
    }

    private static double fraction(double x) {
        double tail = x;
        for (int term = FRACTION_TERMS; term > 0; term--) {
            tail = x + term / 2.0 / tail;
        }
        return 1 / (Math.sqrt(Math.PI) * tail);
    }

    /** The {@code τ} at which this part is left; infinite where it lasts beyond all times of a workshop. */
    static double tauWhenLeft(double excess) {
        if (excess >= 1) {
            return 0;
        }
        if (excess <= excess(TAU_HIGHEST)) {
            return Double.POSITIVE_INFINITY;
        }
        double low = 0;
        double high = TAU_HIGHEST;
        for (int halving = 0; halving < 200 && high - low > 1e-12 * high; halving++) {
            double middle = low < 1e-9 ? Math.min(high / 2, Math.max(1e-9, high / 1e6)) : Math.sqrt(low * high);
            if (excess(middle) > excess) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
