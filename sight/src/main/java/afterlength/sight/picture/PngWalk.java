package afterlength.sight.picture;

import java.nio.ByteBuffer;

/**
 * Walks the chunks of a PNG file (length, name, data, check sum) from the header to the end mark. The check sums are not
 * verified; damage in the data shows when the picture is decoded. Source: docs/sources.md#png-specification.
 */
final class PngWalk {
    private static final int SIGNATURE = 8;
    private static final int AROUND_DATA = 12;
    private static final int HEADER_DATA = 13;
    private static final int IHDR = 0x49484452;
    private static final int IEND = 0x49454E44;

    private PngWalk() {}

    static PictureHead of(byte[] png) {
        ByteBuffer bytes = ByteBuffer.wrap(png);
        int at = SIGNATURE;
        if (png.length < at + AROUND_DATA + HEADER_DATA || bytes.getInt(at + 4) != IHDR) {
            return new PictureHead(0, 0, false);
        }
        int width_px = bytes.getInt(at + 8);
        int height_px = bytes.getInt(at + 12);
        return new PictureHead(width_px, height_px, reachesEnd(bytes, at));
    }

    private static boolean reachesEnd(ByteBuffer bytes, int from) {
        long at = from;
        while (at + AROUND_DATA <= bytes.limit()) {
            int length = bytes.getInt((int) at);
            if (length < 0) {
                return false;
            }
            if (bytes.getInt((int) at + 4) == IEND) {
                return true;
            }
            at += AROUND_DATA + (long) length;
        }
        return false;
    }
}
