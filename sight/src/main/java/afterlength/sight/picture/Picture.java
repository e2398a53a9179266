package afterlength.sight.picture;

import java.awt.image.BufferedImage;

/**
 * A picture to measure in: its pixels as one sees them, upright, and what the camera noted. Pixel (0, 0) is the upper left
 * corner of the upright picture; the centre of the first pixel is (0.5, 0.5).
 *
 * @param turn from the way the sensor lay to upright
 */
public record Picture(BufferedImage upright, CameraNotes notes, CameraTurn turn) implements PictureAnswer {
    public int width_px() {
        return upright.getWidth();
    }

    public int height_px() {
        return upright.getHeight();
    }
}
