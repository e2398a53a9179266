package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.camera.View;
import java.awt.image.BufferedImage;

/**
 * The picture as if taken from straight above: every pixel of it is a square of the same size in a plane at one height over the
 * card. Things at other heights are drawn out of place. It is derived and can be made anew; brightness lies between the four
 * nearest pixels, and what the photograph does not show stays white.
 *
 * @param corner the place on the card's axes of its upper left corner
 */
public record RectifiedPicture(BufferedImage picture, Point corner, double px_mm) {
    /** Above it a rectified picture is larger than the photographs it comes from. */
    public static final long MOST_PIXELS = 40_000_000;

    private static final int WHITE = 0xFFFFFF;

    /**
     * Draws a part of the plane.
     *
     * @param upright the photograph that was measured
     * @param px_mm pixels for a millimetre
     */
    public static RectifiedPicture of(
            BufferedImage upright, View view, double height_mm, Point corner, Point opposite, double px_mm) {
        int width = (int) Math.ceil((opposite.x_mm() - corner.x_mm()) * px_mm);
        int height = (int) Math.ceil((opposite.y_mm() - corner.y_mm()) * px_mm);
        if (width < 1 || height < 1 || (long) width * height > MOST_PIXELS) {
            throw new IllegalArgumentException("a rectified picture of " + width + " × " + height
                    + " pixels; give at least 1 and" + " together at most " + MOST_PIXELS);
        }
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] line = new int[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                Point place = corner.plus((x + 0.5) / px_mm, (y + 0.5) / px_mm);
                line[x] = colour(upright, view.pixel(place, height_mm));
            }
            picture.setRGB(0, y, width, 1, line, 0, width);
        }
        return new RectifiedPicture(picture, corner, px_mm);
    }

    /** The place on the card's axes of a pixel of this picture. */
    public Point place(Pixel pixel) {
        return corner.plus(pixel.x() / px_mm, pixel.y() / px_mm);
    }

    private static int colour(BufferedImage upright, Pixel pixel) {
        double left = pixel.x() - 0.5;
        double top = pixel.y() - 0.5;
        boolean shown = left >= 0 && top >= 0 && left < upright.getWidth() - 1 && top < upright.getHeight() - 1;
        if (!shown) {
            return WHITE;
        }
        int x = (int) left;
        int y = (int) top;
        double right = left - x;
        double down = top - y;
        int above = mixed(upright.getRGB(x, y), upright.getRGB(x + 1, y), right);
        int below = mixed(upright.getRGB(x, y + 1), upright.getRGB(x + 1, y + 1), right);
        return mixed(above, below, down);
    }

    private static int mixed(int one, int other, double share) {
        int mixed = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int from = one >> shift & 0xFF;
            int to = other >> shift & 0xFF;
            mixed |= (int) Math.round(from + (to - from) * share) << shift;
        }
        return mixed;
    }
}
