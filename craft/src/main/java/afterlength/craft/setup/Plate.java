package afterlength.craft.setup;

/**
 * A plate where the post stands.
 *
 * @param thickness_mm square to its surface, as a caliper reads it
 */
public record Plate(PlateSurface surface, double thickness_mm) {}
