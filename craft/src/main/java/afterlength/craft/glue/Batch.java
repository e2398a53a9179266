package afterlength.craft.glue;

/**
 * A batch to make up: dry glue and water by mass, and how much of it is glue once the water that the dry glue brings along is
 * counted as water. For joints the mass is their area times the film on both faces times the density, with a reserve for pot and
 * brush.
 *
 * @param trueSolids_pct mass of water-free glue in the batch
 */
public record Batch(double dry_g, double water_g, double trueSolids_pct) {
    /** Middle of 10 to 14 %. Source: docs/sources.md#glue-grades. */
    public static final double USUAL_MOISTURE_PCT = 12;

    /** Common practice: what stays in pot and brush. */
    public static final double RESERVE = 3;

    public double total_g() {
        return dry_g + water_g;
    }

    public static Batch of(double total_g, double waterForOne, double glueMoisture_pct) {
        if (!(total_g > 0 && waterForOne > 0 && glueMoisture_pct >= 0 && glueMoisture_pct < 100)) {
            throw new IllegalArgumentException("batch of " + total_g + " g with " + waterForOne
                    + " parts of water and glue of " + glueMoisture_pct + " % moisture cannot be made");
        }
        double dry_g = total_g / (1 + waterForOne);
        return new Batch(dry_g, total_g - dry_g, 100 * dry_g * (1 - glueMoisture_pct / 100) / total_g);
    }

    /** Mass of glue for joints of this area, film on one face in mm, with the reserve. */
    public static double needed_g(double joints_cm2, double film_mm, double waterForOne) {
        double density_g_cm3 = GlueLiquid.of(1 / waterForOne).density_kg_m3() / 1000;
        return joints_cm2 * film_mm / 10 * 2 * density_g_cm3 * RESERVE;
    }
}
