package afterlength.craft.wood;

import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.Temperature;

/**
 * How wood carries and holds heat across the grain. With {@code G} the specific gravity (oven-dry mass on the volume at the
 * moisture {@code x} in per cent) and {@code T} in kelvin
 *
 * <pre>  k = G·(0.1941 + 0.004064·x) + 0.01864                                              W/mK
 *   c = (c0 + 4.18·x/100)/(1 + x/100) + x·(−0.06191 + 2.36e-4·T − 1.33e-4·x),  c0 = 0.1031 + 0.003867·T   kJ/kgK
 *   ρ = 1000·G·(1 + x/100)                                                              kg/m³</pre>
 *
 * <p>Valid for {@code G} above 0.3, moisture below 25 % and temperatures near that of a room; the conductivity may be out by
 * {@value #CONDUCTIVITY_SPREAD_PCT} %. Along the grain wood carries about 1.8 times as much. Left out: knots, resin, grain that
 * runs out. Sources: docs/sources.md#wood-handbook-2010 (conductivity), docs/sources.md#wood-heat-code (heat capacity),
 * docs/sources.md#wood-handbook-2021 (density).
 *
 * @param conductivity_W_mK across the grain
 * @param density_kg_m3 with the water in it
 * @param heat_J_kgK heat capacity for each kilogram of moist wood
 */
public record WoodHeat(double conductivity_W_mK, double density_kg_m3, double heat_J_kgK) {
    /** The source says that single pieces may lie this far from the formula of the conductivity. */
    public static final double CONDUCTIVITY_SPREAD_PCT = 20;

    static final double LEAST_GRAVITY = 0.3;
    static final double MOST_GRAVITY = 1.3;
    static final double MOST_MOISTURE_PCT = 25;

    private static final double ZERO_C_IN_K = 273.15;

    /** Usual moisture of wood in a workshop, for the woods named below. */
    private static final MoistureContent USUAL = MoistureContent.ofPct(12);

    private static final Temperature ROOM = Temperature.ofCelsius(20);

    /** Sitka spruce, specific gravity 0.36, at 12 % and 20 °C. Source: docs/sources.md#wood-gravity. */
    public static final WoodHeat SPRUCE = of(0.36, USUAL, ROOM);

    /** Sugar maple, specific gravity 0.63, at 12 % and 20 °C. Source: docs/sources.md#wood-handbook-2021, table 5-3. */
    public static final WoodHeat MAPLE = of(0.63, USUAL, ROOM);

    public WoodHeat {
        if (!(conductivity_W_mK > 0 && density_kg_m3 > 0 && heat_J_kgK > 0)) {
            throw new IllegalArgumentException("wood with conductivity " + conductivity_W_mK + " W/mK, density "
                    + density_kg_m3 + " kg/m³ and heat capacity " + heat_J_kgK + " J/kgK: all must be above zero");
        }
    }

    public static WoodHeat of(double gravity, MoistureContent moisture, Temperature temperature) {
        double x_pct = moisture.pct();
        if (!(gravity > LEAST_GRAVITY && gravity <= MOST_GRAVITY && x_pct < MOST_MOISTURE_PCT)) {
            throw new IllegalArgumentException("specific gravity " + gravity + " at " + x_pct
                    + " % moisture: the formula is valid above 0.3, to 1.3, and below 25 %");
        }
        return new WoodHeat(
                gravity * (0.1941 + 0.004064 * x_pct) + 0.01864,
                1000 * gravity * (1 + x_pct / 100),
                1000 * heat_kJ_kgK(x_pct, temperature.celsius() + ZERO_C_IN_K));
    }

    /**
     * The specific gravity at a moisture, from that on the green volume: the wood has shrunk by {@code S0·(1 − x/30)} per cent.
     * Source: docs/sources.md#wood-handbook-2021.
     */
    static double gravityAt(double greenGravity, double totalShrinkage_pct, MoistureContent moisture) {
        double shrunk_pct = totalShrinkage_pct * (1 - moisture.pct() / WidthChange.FIBRE_SATURATION_PCT);
        return greenGravity / (1 - shrunk_pct / 100);
    }

    private static double heat_kJ_kgK(double x_pct, double t_K) {
        double dry = 0.1031 + 0.003867 * t_K;
        double mixed = (dry + 4.18 * x_pct / 100) / (1 + x_pct / 100);
        return mixed + x_pct * (-0.06191 + 2.36e-4 * t_K - 1.33e-4 * x_pct);
    }

    /** How fast a change of temperature travels. */
    public double diffusivity_m2_s() {
        return conductivity_W_mK / (density_kg_m3 * heat_J_kgK);
    }

    /** How greedily the surface takes up heat, the square root of {@code kρc}, in W·√s/(m²K). */
    public double effusivity() {
        return Math.sqrt(conductivity_W_mK * density_kg_m3 * heat_J_kgK);
    }

    /** The same wood with a conductivity that many times as large. */
    public WoodHeat withConductivityTimes(double factor) {
        return new WoodHeat(conductivity_W_mK * factor, density_kg_m3, heat_J_kgK);
    }
}
