package afterlength.workshop.examination;

/**
 * What a picture's own structure says, read without decoding a pixel.
 *
 * @param width_px 0 when the file ends, or makes no sense, before it tells
 * @param whole whether the end mark of the picture is there
 */
record PictureHead(int width_px, int height_px, boolean whole) {
    boolean hasSize() {
        return width_px > 0 && height_px > 0;
    }

    long pixels() {
        return (long) width_px * height_px;
    }
}
