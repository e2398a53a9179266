package afterlength.craft.setup;

/**
 * Where the strings leave the bridge behind. Heights are over the belly at the bridge, square to the plane of the edges.
 *
 * @param afterLength_mm along the body from bridge to tailpiece fret
 * @param height_mm of the strings at the tailpiece fret
 * @param spacing_mm between the outer strings at the tailpiece fret
 * @param boardSlope_deg how steeply the board line rises to the bridge against the plane of the edges, 6 to 8 in most violins
 */
public record TailEnd(double afterLength_mm, double height_mm, double spacing_mm, double boardSlope_deg) {}
