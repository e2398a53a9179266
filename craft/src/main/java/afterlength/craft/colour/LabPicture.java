package afterlength.craft.colour;

/**
 * A {@link LinearPicture} as lightness and colour, for reading places between its pixels: the nearest four are mixed as they look
 * and not as light.
 */
final class LabPicture {
    private final int width;
    private final int height;
    private final double pixelsPerMm;
    private final double[][] planes;

    private LabPicture(LinearPicture light, double[][] planes) {
        this.width = light.width();
        this.height = light.height();
        this.pixelsPerMm = light.pixelsPerMm();
        this.planes = planes;
    }

    static LabPicture of(LinearPicture light) {
        double[][] planes = new double[3][light.width() * light.height()];
        for (int i = 0; i < planes[0].length; i++) {
            Xyz pixel = new Xyz(light.plane(0)[i], light.plane(1)[i], light.plane(2)[i]);
            Lab seen = Lab.of(pixel, Xyz.SRGB_WHITE);
            planes[0][i] = seen.lightness();
            planes[1][i] = seen.a();
            planes[2][i] = seen.b();
        }
        return new LabPicture(light, planes);
    }

    boolean holds(double x_mm, double y_mm) {
        return x_mm >= 0 && y_mm >= 0 && x_mm * pixelsPerMm <= width && y_mm * pixelsPerMm <= height;
    }

    /** Between the four pixels around a place; beyond the rim the rim goes on. */
    Lab at_mm(double x_mm, double y_mm) {
        double column = Math.max(0, Math.min(width - 1.0, x_mm * pixelsPerMm - 0.5));
        double row = Math.max(0, Math.min(height - 1.0, y_mm * pixelsPerMm - 0.5));
        int left = Math.min((int) column, Math.max(0, width - 2));
        int top = Math.min((int) row, Math.max(0, height - 2));
        return new Lab(
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
