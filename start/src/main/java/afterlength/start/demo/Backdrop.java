package afterlength.start.demo;

/** A warm neutral ground behind the instrument, brighter towards the lamp, like painted board. */
final class Backdrop {
    /** Clouds are so broad that they need not be asked for at every pixel. */
    private static final int CLOUD_STEP = 4;

    private Backdrop() {}

    static void paint(Canvas canvas, Noise noise) {
        int width = canvas.frame().width();
        int height = canvas.frame().height();
        int[] pixels = canvas.pixels();
        for (int row = 0; row < height; row++) {
            double cloud = 0;
            for (int column = 0; column < width; column++) {
                cloud = column % CLOUD_STEP == 0 ? noise.at(column / 210.0, row / 180.0) : cloud;
                pixels[row * width + column] = tone((double) column / width, (double) row / height, cloud);
            }
        }
    }

    /** x and y run from 0 to 1 across the picture. */
    private static int tone(double x, double y, double cloud) {
        double fromLamp = (x - 0.36) * (x - 0.36) + (y - 0.30) * (y - 0.30);
        double bright = 1.06 - 0.62 * fromLamp + 0.022 * cloud;
        return Light.rgb(0.50 * bright, 0.452 * bright, 0.385 * bright);
    }
}
