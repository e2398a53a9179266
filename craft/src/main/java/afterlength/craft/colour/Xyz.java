package afterlength.craft.colour;

/** CIE 1931 tristimulus values for the 2° observer, scaled so that the white of the light has y = 1. */
public record Xyz(double x, double y, double z) {
    /** The white of D65 as sRGB uses it, from its chromaticity 0.3127, 0.3290. Source: docs/sources.md#srgb. */
    public static final Xyz SRGB_WHITE = new Xyz(0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290);

    /** The chromaticity x. */
    public double chromaticityX() {
        return x / (x + y + z);
    }

    /** The chromaticity y. */
    public double chromaticityY() {
        return y / (x + y + z);
    }
}
