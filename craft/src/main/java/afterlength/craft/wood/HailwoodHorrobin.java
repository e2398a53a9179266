package afterlength.craft.wood;

/**
 * Equilibrium moisture content after Hailwood and Horrobin, with two hydrates and the coefficients for degrees Celsius: water is
 * held in wood partly as two hydrates, partly dissolved. With {@code h} the relative humidity as a fraction,
 *
 * <pre>  M = 1800/W · [ Kh/(1 − Kh) + (K1·Kh + 2·K1·K2·(Kh)²) / (1 + K1·Kh + K1·K2·(Kh)²) ]   in per cent</pre>
 *
 * <p>It rises strictly with {@code h} while {@code Kh < 1}. The formula alone knows no range: {@link EquilibriumMoisture} keeps
 * to the one that was read. Source: docs/sources.md#wood-handbook-2021, equation 4-5.
 */
final class HailwoodHorrobin {
    private final double w;
    private final double k;
    private final double k1;
    private final double k2;

    private HailwoodHorrobin(double t_C) {
        w = 349 + 1.29 * t_C + 0.0135 * t_C * t_C;
        k = 0.805 + 0.000736 * t_C - 0.00000273 * t_C * t_C;
        k1 = 6.27 - 0.00938 * t_C - 0.000303 * t_C * t_C;
        k2 = 1.91 + 0.0407 * t_C - 0.000293 * t_C * t_C;
    }

    static HailwoodHorrobin at_C(double t_C) {
        return new HailwoodHorrobin(t_C);
    }

    /** Moisture content in per cent for a relative humidity in per cent. */
    double moisture_pct(double humidity_pct) {
        double kh = k * humidity_pct / 100;
        double dissolved = kh / (1 - kh);
        double firstHydrate = k1 * kh;
        double secondHydrate = k1 * k2 * kh * kh;
        double hydrated = (firstHydrate + 2 * secondHydrate) / (1 + firstHydrate + secondHydrate);
        return 1800 / w * (dissolved + hydrated);
    }
}
