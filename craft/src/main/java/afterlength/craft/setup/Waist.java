package afterlength.craft.setup;

/**
 * The narrow middle of the body, which the bow meets on the outer strings.
 *
 * @param width_mm between the edges of the C-bouts at the bridge
 * @param edgeDrop_mm how far the top edge lies below the crown of the belly at the bridge
 */
public record Waist(double width_mm, double edgeDrop_mm) {}
