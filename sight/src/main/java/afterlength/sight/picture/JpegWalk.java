package afterlength.sight.picture;

/**
 * Walks the segments of a JPEG file to the end mark. A frame header carries the size; the thumbnail that a camera hides in an
 * application segment is stepped over with it, so its own end mark is not mistaken for the picture's. Source:
 * docs/sources.md#jpeg-standard.
 */
final class JpegWalk {
    private static final int MARK = 0xFF;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;

    private final byte[] bytes;
    private int at;
    private int width_px;
    private int height_px;

    private JpegWalk(byte[] bytes) {
        this.bytes = bytes;
        at = 2;
    }

    static PictureHead of(byte[] jpeg) {
        JpegWalk walk = new JpegWalk(jpeg);
        boolean whole = walk.toTheEnd();
        return new PictureHead(walk.width_px, walk.height_px, whole);
    }

    private boolean toTheEnd() {
        while (findMark()) {
            int mark = byteAt(at++);
            if (mark == END) {
                return true;
            }
            if (!standsAlone(mark) && !stepOver(mark)) {
                return false;
            }
        }
        return false;
    }

    /** Goes to the next byte that names a segment; what is compressed, and stuffed zeros in it, is passed over. */
    private boolean findMark() {
        while (at + 1 < bytes.length) {
            int next = byteAt(at + 1);
            if (byteAt(at) == MARK && next != 0 && next != MARK) {
                at++;
                return true;
            }
            at++;
        }
        return false;
    }

    private boolean stepOver(int mark) {
        if (at + 2 > bytes.length) {
            return false;
        }
        int length = twoBytesAt(at);
        if (length < 2 || at + length > bytes.length) {
            return false;
        }
        if (isFrame(mark) && length >= 8) {
            height_px = twoBytesAt(at + 3);
            width_px = twoBytesAt(at + 5);
        }
        at += length;
        return mark != SCAN || hasSize();
    }

    private boolean hasSize() {
        return width_px > 0 && height_px > 0;
    }

    /** Start-of-frame marks are C0 to CF without the three that announce tables or extensions. */
    private static boolean isFrame(int mark) {
        return mark >= 0xC0 && mark <= 0xCF && mark != 0xC4 && mark != 0xC8 && mark != 0xCC;
    }

    private static boolean standsAlone(int mark) {
        return mark == 0x01 || (mark >= 0xD0 && mark <= 0xD8);
    }

    private int byteAt(int place) {
        return bytes[place] & 0xFF;
    }

    private int twoBytesAt(int place) {
        return byteAt(place) << 8 | byteAt(place + 1);
    }
}
