package afterlength.sight.measure;

import afterlength.sight.camera.Pixel;
import java.util.List;

/**
 * Something drawn on the picture.
 *
 * @param id what the asker calls it
 * @param pixels in the upright picture
 */
public record Mark(String id, MarkKind kind, List<Pixel> pixels, Height height) {
    public Mark {
        pixels = List.copyOf(pixels);
        if (pixels.size() < kind.fewest()) {
            throw new IllegalArgumentException("the mark \"" + id + "\" has " + pixels.size() + " points; a "
                    + kind.word() + " needs " + kind.fewest() + " or more");
        }
    }
}
