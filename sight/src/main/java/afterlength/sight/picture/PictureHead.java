package afterlength.sight.picture;

/**
 * What a picture's own structure says, read without decoding a pixel.
 *
 * @param width_px 0 when the file ends, or makes no sense, before it tells
 * @param whole whether the end mark of the picture is there
 */
public record PictureHead(int width_px, int height_px, boolean whole) {
    public boolean hasSize() {
        return width_px > 0 && height_px > 0;
    }

    public long pixels() {
        return (long) width_px * height_px;
    }
}
