package afterlength.craft.varnish;

/**
 * One thing weighed into a batch. Any number can stand here, even a wrong one, so that {@link VarnishBatch} can name everything that
 * is wrong at once.
 *
 * @param density_kg_m3 from its own label or sheet; 930 for linseed oil, 1070 for colophony and 870 for oil of turpentine are
 *     remembered values (docs/sources.md#varnish-densities)
 */
public record Ingredient(String name, double mass_g, double density_kg_m3, Part part) {
    double volume_mL() {
        return mass_g / density_kg_m3 * 1000;
    }
}
