package afterlength.craft.colour;

/**
 * A piece of a photograph as light: CIE XYZ of each pixel, the white with y = 1, true to scale. Places are in millimetres from the
 * upper left corner; the centre of the first pixel lies half a pixel in.
 */
public final class LinearPicture {
    private final int width;
    private final int height;
    private final double pixelsPerMm;
    private final double[][] planes;

    LinearPicture(int width, int height, double pixelsPerMm, double[][] planes) {
        this.width = width;
        this.height = height;
        this.pixelsPerMm = pixelsPerMm;
        this.planes = planes;
    }

    /** What a picture shows at each pixel; column and row count from the upper left. */
    @FunctionalInterface
    public interface Source {
        Xyz at(int column, int row);
    }

    public static LinearPicture of(int width, int height, double pixelsPerMm, Source source) {
        double[][] planes = new double[3][width * height];
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                Xyz light = source.at(column, row);
                planes[0][row * width + column] = light.x();
                planes[1][row * width + column] = light.y();
                planes[2][row * width + column] = light.z();
            }
        }
        return new LinearPicture(width, height, pixelsPerMm, planes);
    }

    public double pixelsPerMm() {
        return pixelsPerMm;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    double[] plane(int which) {
        return planes[which];
    }
}
