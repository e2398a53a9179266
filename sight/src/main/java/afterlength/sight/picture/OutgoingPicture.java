package afterlength.sight.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * The same picture for going out of the house: every pixel as it was, but of what the camera noted only the list of
 * {@link OutgoingNotes}: how it was held, when, with which lens. The place, the camera's number, names, comments, what an editing
 * program wrote and whatever lies behind the end of the picture stay behind. What stands on the list goes, not what was thought of
 * as private, so that a note nobody knows of stays too. Source: docs/sources.md#jpeg-standard, docs/sources.md#png-specification.
 */
public final class OutgoingPicture {
    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int COMMENT = 0xFE;
    private static final int JFIF = 0xE0;
    private static final int EXIF = 0xE1;
    private static final int PROFILE = 0xE2;
    private static final int LAST_APPLICATION = 0xEF;
    private static final int ADOBE = 0xEE;
    private static final int PNG_SIGNATURE = 8;
    private static final Set<String> PNG_CHUNKS =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD", "pHYs");

    private final byte[] bytes;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private OutgoingPicture(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * The bytes to hand out.
     *
     * @throws IllegalArgumentException when the bytes are no whole JPEG or PNG
     */
    public static byte[] of(byte[] bytes) {
        FileKind kind = FileKind.of(bytes);
        if (kind == FileKind.JPEG) {
            return new OutgoingPicture(bytes).jpeg();
        }
        if (kind == FileKind.PNG) {
            return new OutgoingPicture(bytes).png();
        }
        throw new IllegalArgumentException("only JPEG and PNG are handed out, not " + kind.words());
    }

    private byte[] jpeg() {
        out.write(bytes, 0, 2);
        byte[] notes = OutgoingNotes.of(bytes);
        out.write(notes, 0, notes.length);
        int at = 2;
        while (at >= 0) {
            at = segment(at);
        }
        return out.toByteArray();
    }

    /** Takes the segment at this place and answers where the next one begins, or -1 behind the end of the picture. */
    private int segment(int from) {
        int at = from;
        while (unsigned(at) == 0xFF && unsigned(at + 1) == 0xFF) {
            at++;
        }
        int marker = unsigned(at + 1);
        if (unsigned(at) != 0xFF || marker == START) {
            throw broken();
        }
        if (marker == END) {
            out.write(bytes, at, 2);
            return -1;
        }
        int end = at + 2 + (unsigned(at + 2) << 8 | unsigned(at + 3));
        if (end > bytes.length || end < at + 4) {
            throw broken();
        }
        end = marker == SCAN ? endOfScan(end) : end;
        if (goesOut(marker, at + 4)) {
            out.write(bytes, at, end - at);
        }
        return end;
    }

    private int endOfScan(int from) {
        int at = from;
        while (!(unsigned(at) == 0xFF && isMarker(unsigned(at + 1)))) {
            at++;
        }
        return at;
    }

    /** A zero behind 0xFF is a value of the scan, 0xD0 to 0xD7 let a decoder begin anew, 0xFF only fills. */
    private static boolean isMarker(int code) {
        return code != 0 && code != 0xFF && (code < 0xD0 || code > 0xD7);
    }

    private boolean goesOut(int marker, int data) {
        boolean application = marker >= JFIF && marker <= LAST_APPLICATION;
        return switch (marker) {
            case JFIF -> begins(data, "JFIF\0");
            case PROFILE -> begins(data, "ICC_PROFILE\0");
            case ADOBE -> begins(data, "Adobe");
            case EXIF, COMMENT -> false;
            default -> !application;
        };
    }

    private boolean begins(int at, String word) {
        byte[] wanted = word.getBytes(StandardCharsets.ISO_8859_1);
        return at + wanted.length <= bytes.length
                && new String(bytes, at, wanted.length, StandardCharsets.ISO_8859_1).equals(word);
    }

    private byte[] png() {
        out.write(bytes, 0, PNG_SIGNATURE);
        ByteBuffer from = ByteBuffer.wrap(bytes);
        int at = PNG_SIGNATURE;
        String name = "";
        while (!name.equals("IEND")) {
            if (at + 12 > bytes.length || from.getInt(at) < 0 || from.getInt(at) > bytes.length - at - 12) {
                throw broken();
            }
            int whole = from.getInt(at) + 12;
            name = new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (PNG_CHUNKS.contains(name)) {
                out.write(bytes, at, whole);
            }
            at += whole;
        }
        return out.toByteArray();
    }

    private int unsigned(int at) {
        if (at >= bytes.length) {
            throw broken();
        }
        return bytes[at] & 0xFF;
    }

    private static IllegalArgumentException broken() {
        return new IllegalArgumentException("the picture is not whole");
    }
}
