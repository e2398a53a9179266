package afterlength.workshop.retouch;

import afterlength.craft.colour.LinearPicture;
import afterlength.craft.colour.Srgb;
import afterlength.craft.colour.Xyz;
import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import java.awt.image.BufferedImage;
import java.util.stream.IntStream;

/**
 * Lays a piece of a photograph out as light, true to scale and as if seen from straight above. Every pixel of it is the mean of as
 * many places as it covers pixels of the photograph, so that no thin line slips through between two of them.
 */
final class LightField {
    private static final double[] LIGHT = IntStream.range(0, 256)
            .mapToDouble(value -> Srgb.linear(value / 255.0))
            .toArray();

    private final BufferedImage upright;
    private final Scale scale;

    LightField(BufferedImage upright, Scale scale) {
        this.upright = upright;
        this.scale = scale;
    }

    /**
     * Lays a rectangle out.
     *
     * @param finest pixels that a millimetre of the photograph has at most
     */
    LinearPicture of(Point corner, Point opposite, double px_mm, double finest) {
        int width = (int) Math.floor((opposite.x_mm() - corner.x_mm()) * px_mm);
        int height = (int) Math.floor((opposite.y_mm() - corner.y_mm()) * px_mm);
        int places = (int) Math.max(1, Math.round(finest / px_mm));
        return LinearPicture.of(
                width,
                height,
                px_mm,
                (column, row) -> mean(corner.plus(column / px_mm, row / px_mm), 1 / (px_mm * places), places));
    }

    private Xyz mean(Point corner, double step_mm, int places) {
        double[] sum = new double[3];
        for (int down = 0; down < places; down++) {
            for (int right = 0; right < places; right++) {
                add(scale.pixel(corner.plus((right + 0.5) * step_mm, (down + 0.5) * step_mm)), sum);
            }
        }
        int count = places * places;
        return Srgb.xyzOfLight(sum[0] / count, sum[1] / count, sum[2] / count);
    }

    /** Between the four nearest pixels, mixed as light. */
    private void add(Pixel pixel, double[] sum) {
        double left = Math.max(0, Math.min(upright.getWidth() - 1.001, pixel.x() - 0.5));
        double top = Math.max(0, Math.min(upright.getHeight() - 1.001, pixel.y() - 0.5));
        int x = (int) left;
        int y = (int) top;
        double right = left - x;
        double down = top - y;
        add(upright.getRGB(x, y), (1 - right) * (1 - down), sum);
        add(upright.getRGB(x + 1, y), right * (1 - down), sum);
        add(upright.getRGB(x, y + 1), (1 - right) * down, sum);
        add(upright.getRGB(x + 1, y + 1), right * down, sum);
    }

    private static void add(int rgb, double share, double[] sum) {
        sum[0] += share * LIGHT[rgb >> 16 & 0xFF];
        sum[1] += share * LIGHT[rgb >> 8 & 0xFF];
        sum[2] += share * LIGHT[rgb & 0xFF];
    }
}
