package afterlength.craft.colour;

/**
 * How far two colours lie apart by CIEDE2000 with all weights 1, in its three parts and the term that turns blues. A difference of
 * about 1 is just seen where two large even fields touch; across a thin line or in grain it is another matter, see
 * {@link LineVisibility}. Source: docs/sources.md#ciede2000.
 *
 * @param lightness weighted difference in lightness
 * @param chroma weighted difference in chroma
 * @param hue weighted difference in hue
 * @param rotation the factor of the product of chroma and hue
 */
public record ColourDifference(double lightness, double chroma, double hue, double rotation) {
    private static final double TWENTY_FIVE_TO_7 = Math.pow(25, 7);

    /**
     * Hues exactly opposite, as in pair 14 of the published table, may come out a last digit above 180°; they are opposite all the
     * same.
     */
    private static final double OPPOSITE_DEG = 180 + 1e-9;

    /** The difference ΔE00. */
    public static double of(Lab first, Lab second) {
        return between(first, second).total();
    }

    public static ColourDifference between(Lab first, Lab second) {
        double stretch = 1 + 0.5 * (1 - neutrality((first.chroma() + second.chroma()) / 2));
        double a1 = first.a() * stretch;
        double a2 = second.a() * stretch;
        double chroma1 = Math.hypot(a1, first.b());
        double chroma2 = Math.hypot(a2, second.b());
        boolean grey = chroma1 * chroma2 == 0;
        double hue1_deg = hue_deg(a1, first.b());
        double hue2_deg = hue_deg(a2, second.b());
        double turn_deg = grey ? 0 : turn_deg(hue1_deg, hue2_deg);
        double chroma = (chroma1 + chroma2) / 2;
        double hue_deg = grey ? hue1_deg + hue2_deg : mean_deg(hue1_deg, hue2_deg);
        double fromMiddle = Math.pow((first.lightness() + second.lightness()) / 2 - 50, 2);
        double turn = 2 * Math.sqrt(chroma1 * chroma2) * Math.sin(Math.toRadians(turn_deg / 2));
        return new ColourDifference(
                (second.lightness() - first.lightness()) / (1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle)),
                (chroma2 - chroma1) / (1 + 0.045 * chroma),
                turn / (1 + 0.015 * chroma * hueWeight(hue_deg)),
                rotation(chroma, hue_deg));
    }

    public double total() {
        return Math.sqrt(lightness * lightness + chroma * chroma + hue * hue + rotation * chroma * hue);
    }

    private static double neutrality(double chroma) {
        double power = Math.pow(chroma, 7);
        return Math.sqrt(power / (power + TWENTY_FIVE_TO_7));
    }

    /** StrictMath, so that the same pair gives the same digits on every machine. */
    private static double hue_deg(double a, double b) {
        double hue_deg = a == 0 && b == 0 ? 0 : Math.toDegrees(StrictMath.atan2(b, a));
        return hue_deg < 0 ? hue_deg + 360 : hue_deg;
    }

    private static double turn_deg(double from_deg, double to_deg) {
        double turn_deg = to_deg - from_deg;
        if (Math.abs(turn_deg) <= OPPOSITE_DEG) {
            return turn_deg;
        }
        return turn_deg > 0 ? turn_deg - 360 : turn_deg + 360;
    }

    private static double mean_deg(double first_deg, double second_deg) {
        double sum_deg = first_deg + second_deg;
        if (Math.abs(first_deg - second_deg) <= OPPOSITE_DEG) {
            return sum_deg / 2;
        }
        return (sum_deg < 360 ? sum_deg + 360 : sum_deg - 360) / 2;
    }

    private static double hueWeight(double hue_deg) {
        return 1
                - 0.17 * Math.cos(Math.toRadians(hue_deg - 30))
                + 0.24 * Math.cos(Math.toRadians(2 * hue_deg))
                + 0.32 * Math.cos(Math.toRadians(3 * hue_deg + 6))
                - 0.20 * Math.cos(Math.toRadians(4 * hue_deg - 63));
    }

    private static double rotation(double chroma, double hue_deg) {
        double blue = 30 * Math.exp(-Math.pow((hue_deg - 275) / 25, 2));
        return -Math.sin(Math.toRadians(2 * blue)) * 2 * neutrality(chroma);
    }
}
