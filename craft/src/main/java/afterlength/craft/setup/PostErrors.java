package afterlength.craft.setup;

/** How closely the readings for a post are taken: heights, thickness and ribs in millimetres, slopes in degrees. */
public record PostErrors(double height_mm, double thickness_mm, double rib_mm, double slope_deg) {
    /** Calipers to a tenth, a bevel to half a degree. Source: docs/sources.md#setup-common-practice. */
    public static final PostErrors USUAL = new PostErrors(0.1, 0.1, 0.1, 0.5);
}
