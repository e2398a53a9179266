package afterlength.craft.access;

/**
 * What the person saw of a crack, as far as it bears on opening the top.
 *
 * @param underPost it runs under the post or its place
 * @param underBar it runs along or under the bar
 * @param step_mm by how much its edges stand out of level
 * @param closesDry it closes by hand without glue or clamps
 * @param cleanable it could be cleaned, or needs no cleaning
 * @param cleatsOutOfReach cleats that no clamp of the shop reaches
 */
public record CrackFacts(
        boolean underPost,
        boolean underBar,
        double step_mm,
        boolean closesDry,
        boolean cleanable,
        int cleatsOutOfReach) {}
