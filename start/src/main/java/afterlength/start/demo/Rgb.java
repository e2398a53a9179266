package afterlength.start.demo;

/** A pixel's 24 bits: red, green and blue from 0 to 255. */
final class Rgb {
    private Rgb() {}

    static int of(int red, int green, int blue) {
        return (red << 16) | (green << 8) | blue;
    }

    static int red(int pixel) {
        return (pixel >> 16) & 0xff;
    }

    static int green(int pixel) {
        return (pixel >> 8) & 0xff;
    }

    static int blue(int pixel) {
        return pixel & 0xff;
    }

    /** One colour over another; a share of 255 covers it wholly. */
    static int mixed(int under, int over, int share) {
        return share == 255
                ? over
                : of(
                        mean(red(under), red(over), share),
                        mean(green(under), green(over), share),
                        mean(blue(under), blue(over), share));
    }

    private static int mean(int under, int over, int share) {
        return (under * (255 - share) + over * share) / 255;
    }
}
