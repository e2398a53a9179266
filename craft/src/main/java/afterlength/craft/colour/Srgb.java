package afterlength.craft.colour;

/**
 * A colour as a screen or a photograph holds it: red, green and blue of sRGB, 0 to 1, with the curve of the standard.
 * Source: docs/sources.md#srgb.
 */
public record Srgb(double red, double green, double blue) {
    public static Srgb ofBytes(int red, int green, int blue) {
        return new Srgb(red / 255.0, green / 255.0, blue / 255.0);
    }

    public Xyz toXyz() {
        return SrgbPrimaries.xyz(linear(red), linear(green), linear(blue));
    }

    /** The same of light that is linear already, 0 to 1 in each channel, such as a mean over pixels. */
    public static Xyz xyzOfLight(double red, double green, double blue) {
        return SrgbPrimaries.xyz(red, green, blue);
    }

    public Lab toLab() {
        return Lab.of(toXyz(), Xyz.SRGB_WHITE);
    }

    /** The colour without regard to what a screen can show; see {@link #shown}. */
    public static Srgb of(Lab colour) {
        double[] linear = SrgbPrimaries.linear(colour.toXyz(Xyz.SRGB_WHITE));
        return new Srgb(curve(linear[0]), curve(linear[1]), curve(linear[2]));
    }

    /** The nearest colour, channel by channel, that a screen can show. */
    public Srgb shown() {
        return new Srgb(within(red), within(green), within(blue));
    }

    /** As a drawing writes it, such as {@code #c98b3e}. */
    public String hex() {
        Srgb shown = shown();
        return String.format("#%02x%02x%02x", toByte(shown.red), toByte(shown.green), toByte(shown.blue));
    }

    /** Light of a channel, 0 to 1, from its written value. Values below 0 are mirrored, as a colour outside the screen's has them. */
    public static double linear(double written) {
        return written < 0
                ? -linear(-written)
                : written <= 0.04045 ? written / 12.92 : Math.pow((written + 0.055) / 1.055, 2.4);
    }

    private static double curve(double light) {
        return light < 0
                ? -curve(-light)
                : light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }

    private static double within(double value) {
        return Math.max(0, Math.min(1, value));
    }

    private static int toByte(double value) {
        return (int) Math.round(255 * value);
    }
}
