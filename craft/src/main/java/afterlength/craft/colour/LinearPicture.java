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

    boolean holds(double x_mm, double y_mm) {
        return x_mm >= 0 && y_mm >= 0 && x_mm * pixelsPerMm <= width && y_mm * pixelsPerMm <= height;
    }

    /** Between the four pixels around a place; beyond the rim the rim goes on. */
    Xyz at_mm(double x_mm, double y_mm) {
        double column = Math.max(0, Math.min(width - 1.0, x_mm * pixelsPerMm - 0.5));
        double row = Math.max(0, Math.min(height - 1.0, y_mm * pixelsPerMm - 0.5));
        int left = Math.min((int) column, Math.max(0, width - 2));
        int top = Math.min((int) row, Math.max(0, height - 2));
        return new Xyz(
                between(planes[0], left, top, column - left, row - top),
                between(planes[1], left, top, column - left, row - top),
                between(planes[2], left, top, column - left, row - top));
    }

    private double between(double[] plane, int left, int top, double right, double down) {
        int first = top * width + left;
        int next = width > 1 ? 1 : 0;
        int below = height > 1 ? width : 0;
        return (1 - down) * ((1 - right) * plane[first] + right * plane[first + next])
                + down * ((1 - right) * plane[first + below] + right * plane[first + below + next]);
    }
}
