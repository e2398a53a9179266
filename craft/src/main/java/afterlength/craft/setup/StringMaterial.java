package afterlength.craft.setup;

/** Densities to start from for solid strings; a shop may put its own in their place. */
public enum StringMaterial {
    /** Source: docs/sources.md#satoh-gut; another source has 1500. */
    GUT(1300),
    /** Source: docs/sources.md#setup-common-practice; docs/sources.md#maron-strings has 7900. */
    STEEL(7850),
    /** Source: docs/sources.md#maron-strings. */
    NYLON(1150);

    private final double density_kg_m3;

    StringMaterial(double density_kg_m3) {
        this.density_kg_m3 = density_kg_m3;
    }

    public double density_kg_m3() {
        return density_kg_m3;
    }
}
