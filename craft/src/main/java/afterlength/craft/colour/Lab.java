package afterlength.craft.colour;

/**
 * A colour in CIE L*a*b* for the 2° observer, against the white of the light it is seen under: D65 unless a name says otherwise.
 * Values against the white of D50, as printing programs give them, are other numbers. Source: docs/sources.md#cie-015.
 *
 * @param lightness L*, 0 black to 100 the white
 * @param a green (negative) to red
 * @param b blue (negative) to yellow
 */
public record Lab(double lightness, double a, double b) {
    /** Below this part of the white the cube root is replaced by a straight line. Source: docs/sources.md#cie-015. */
    private static final double STRAIGHT_BELOW = Math.pow(6.0 / 29, 3);

    private static final double SLOPE = Math.pow(29.0 / 6, 2) / 3;

    /** A colour seen under a light with this white. */
    public static Lab of(Xyz colour, Xyz white) {
        double x = root(colour.x() / white.x());
        double y = root(colour.y() / white.y());
        double z = root(colour.z() / white.z());
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    private static double root(double part) {
        return part > STRAIGHT_BELOW ? Math.cbrt(part) : SLOPE * part + 4.0 / 29;
    }

    /** The way back, against the same white. */
    public Xyz toXyz(Xyz white) {
        double y = (lightness + 16) / 116;
        return new Xyz(white.x() * cube(y + a / 500), white.y() * cube(y), white.z() * cube(y - b / 200));
    }

    private static double cube(double root) {
        return root > 6.0 / 29 ? root * root * root : (root - 4.0 / 29) / SLOPE;
    }

    public double chroma() {
        return Math.hypot(a, b);
    }
}
