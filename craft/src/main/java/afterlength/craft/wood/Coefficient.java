package afterlength.craft.wood;

/**
 * Change of size across the grain, as a fraction of the size, for one per cent of moisture content. Where the source gives a
 * spread, low and high are its ends and typical is the middle between them; where it gives one mean, all three are that mean.
 */
public record Coefficient(double low_perPct, double typical_perPct, double high_perPct) {
    public Coefficient {
        if (!(0 < low_perPct && low_perPct <= typical_perPct && typical_perPct <= high_perPct && high_perPct < 0.1)) {
            throw new IllegalArgumentException("coefficients " + low_perPct + ", " + typical_perPct + ", " + high_perPct
                    + " per % are not in rising order between 0 and 0.1 per %");
        }
    }

    static Coefficient mean(double mean_perPct) {
        return new Coefficient(mean_perPct, mean_perPct, mean_perPct);
    }

    static Coefficient spread(double low_perPct, double high_perPct) {
        return new Coefficient(low_perPct, (low_perPct + high_perPct) / 2, high_perPct);
    }

    /**
     * From the total shrinkage, green to oven-dry: {@code C = 1/(3000/S0 − 20)}, the coefficient at 10 % moisture content.
     * Source: docs/sources.md#wood-handbook-2010, equation 13-3; the form is from memory and was checked against two printed
     * tables.
     */
    static Coefficient fromShrinkage(double s0_pct) {
        return mean(1 / (3000 / s0_pct - 20));
    }

    /** Whether a spread was read, and not one mean alone. */
    public boolean isSpread() {
        return low_perPct < high_perPct;
    }
}
