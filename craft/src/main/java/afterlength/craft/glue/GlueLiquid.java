package afterlength.craft.glue;

/**
 * Density, heat capacity and conductivity of liquid glue, as a mixture of water and protein after Choi and Okos: masses mix the
 * heat capacity, volumes mix density and conductivity. {@code t} in °C, from 0 to 150; the glue is reckoned at {@value #AT_C} °C, the
 * middle of its way from the pot to the gel. The dry glue counts as protein whole: its own 10 to 14 % of water is left out, as in
 * the printed rows this is checked against. Source: docs/sources.md#choi-okos.
 *
 * @param density_kg_m3 of the liquid
 * @param heat_J_kgK for each kilogram of liquid
 * @param conductivity_W_mK of the liquid
 */
public record GlueLiquid(double density_kg_m3, double heat_J_kgK, double conductivity_W_mK) {
    static final double AT_C = 50;

    /** The liquid of a mixture, mass of dry glue to mass of water, such as 0.5 for 1 : 2. */
    public static GlueLiquid of(double glueToWater) {
        double t = AT_C;
        double protein = glueToWater / (1 + glueToWater);
        double water = 1 - protein;
        double waterVolume = water / (997.18 + 3.1439e-3 * t - 3.7574e-3 * t * t);
        double proteinVolume = protein / (1329.9 - 0.51840 * t);
        double volume = waterVolume + proteinVolume;
        return new GlueLiquid(
                1 / volume,
                1000 * (water * waterHeat_kJ_kgK(t) + protein * (2.0082 + 1.2089e-3 * t - 1.3129e-6 * t * t)),
                (waterVolume * (0.57109 + 1.762e-3 * t - 6.703e-6 * t * t)
                                + proteinVolume * (0.17881 + 1.1958e-3 * t - 2.7178e-6 * t * t))
                        / volume);
    }

    /** With the signs of the code that was read; other printings turn two of them, which is worth 1.3 % of the heat capacity. */
    private static double waterHeat_kJ_kgK(double t) {
        return 4.1289 + 9.0864e-5 * t - 5.4731e-6 * t * t;
    }
}
