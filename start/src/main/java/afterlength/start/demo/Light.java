package afterlength.start.demo;

/**
 * One lamp from the upper left and a bright room. Gives how bright a surface of a certain slope is against a level one, and the
 * gloss it throws to the viewer. Also turns linear light into the numbers of a picture (sRGB).
 */
final class Light {
    /** Direction to the lamp, length 1: right, down, towards the viewer. */
    private static final double LAMP_X = -0.46;

    private static final double LAMP_Y = -0.52;
    private static final double LAMP_Z = 0.7198;
    private static final double ROOM = 0.42;

    private static final int STEPS = 4096;
    private static final int[] SRGB = new int[STEPS + 1];

    static {
        for (int i = 0; i <= STEPS; i++) {
            double linear = (double) i / STEPS;
            double value = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
            SRGB[i] = (int) Math.round(255 * value);
        }
    }

    private Light() {}

    /** Brightness of a surface rising by the given slopes to the right and downwards; level is 1. */
    static double diffuse(double slopeX, double slopeY) {
        double length = Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
        double facing = (LAMP_Z - slopeX * LAMP_X - slopeY * LAMP_Y) / length;
        return ROOM + (1 - ROOM) * Math.max(0, facing) / LAMP_Z;
    }

    /** Share of the lamp mirrored to the viewer; 1 when the surface stands exactly right for it. */
    static double gloss(double slopeX, double slopeY) {
        double length = Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
        // Half way between lamp and viewer.
        double facing = (0.9273 - slopeX * -0.248 - slopeY * -0.2804) / length;
        double squared = facing * facing;
        double eighth = squared * squared * squared * squared;
        return facing <= 0 ? 0 : eighth * eighth * eighth * eighth * eighth;
    }

    static int srgb(double linear) {
        return SRGB[(int) (Math.min(Math.max(linear, 0), 1) * STEPS)];
    }

    static int rgb(double red, double green, double blue) {
        return Rgb.of(srgb(red), srgb(green), srgb(blue));
    }
}
