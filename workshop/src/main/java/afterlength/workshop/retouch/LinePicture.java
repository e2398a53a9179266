package afterlength.workshop.retouch;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A photograph in which a line is read.
 *
 * @param warm whether its light was, as far as the card tells
 */
record LinePicture(BufferedImage upright, Scale scale, boolean warm, List<String> caveats) {
    boolean shows(Point place) {
        Pixel pixel = scale.pixel(place);
        return pixel.x() >= 1
                && pixel.y() >= 1
                && pixel.x() <= upright.getWidth() - 1.0
                && pixel.y() <= upright.getHeight() - 1.0;
    }
}
