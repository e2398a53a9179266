package afterlength.start.demo;

/** The finished colour of a place, as 24 bits of sRGB. */
@FunctionalInterface
interface PixelPaint {
    int at(double x_mm, double y_mm);
}
