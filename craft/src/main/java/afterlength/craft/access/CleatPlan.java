package afterlength.craft.access;

import java.util.List;

/**
 * What is wanted of a row of cleats.
 *
 * @param spacing_mm from centre to centre, at most
 * @param toEnds_mm from either end of the crack to the nearest centre, at least
 * @param plateGrain_deg direction of the plate's grain
 * @param density_kg_m3 of the cleats' wood
 */
public record CleatPlan(
        Crack crack,
        Cleat cleat,
        CleatShape shape,
        CleatGrain grain,
        double spacing_mm,
        double toEnds_mm,
        double plateGrain_deg,
        List<KeepOff> keepOffs,
        double density_kg_m3) {
    /** Three eighths of an inch square. Source: docs/sources.md#petherick-1903. */
    public static final Cleat USUAL = new Cleat(3.0 / 8 * 25.4, 3.0 / 8 * 25.4, 1.2);

    /** Source: docs/sources.md#cleat-practice. */
    public static final double CLOSEST_SPACING_MM = 20;

    /** Source: docs/sources.md#cleat-practice. */
    public static final double WIDEST_SPACING_MM = 30;

    /** Of dry spruce, rounded. Source: docs/sources.md#cleat-practice. */
    public static final double SPRUCE_KG_M3 = 430;

    public CleatPlan {
        keepOffs = List.copyOf(keepOffs);
        if (!(spacing_mm > 0 && toEnds_mm >= 0 && density_kg_m3 > 0)) {
            throw new IllegalArgumentException(
                    "spacing " + spacing_mm + " mm, to the ends " + toEnds_mm + " mm, density " + density_kg_m3
                            + " kg/m³; spacing and density must be more than 0, the ends at least 0");
        }
    }
}
