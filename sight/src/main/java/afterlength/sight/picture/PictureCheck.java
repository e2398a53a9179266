package afterlength.sight.picture;

import java.util.Locale;

/**
 * Looks at a file before anything is kept and before memory is spent on it: what it is, how large it is in pixels, whether it
 * is all there. The answer is a picture's head or a reason in plain words.
 */
public sealed interface PictureCheck {
    /** A guard for the memory of a small machine; four times what today's usual cameras make. */
    long MOST_PIXELS = 100_000_000;

    /** Room for the widest panorama. */
    int LONGEST_EDGE_PX = 30_000;

    /** It may be decoded. */
    record Fits(FileKind kind, PictureHead head) implements PictureCheck {
        public String mediaType() {
            return kind == FileKind.PNG ? "image/png" : "image/jpeg";
        }
    }

    /** It is not taken. */
    record Refused(String reason) implements PictureCheck {}

    static PictureCheck of(PictureFile file) {
        byte[] bytes = file.bytes();
        if (bytes.length == 0) {
            return new Refused("The file is empty. Copy it from the camera again.");
        }
        if (bytes.length > PictureFile.LARGEST_BYTES) {
            return new Refused("The file has more than " + PictureFile.LARGEST_BYTES / 1_000_000
                    + " MB; save it as JPEG with fewer pixels.");
        }
        FileKind kind = FileKind.of(bytes);
        return switch (kind) {
            case JPEG -> ofHead(kind, JpegWalk.of(bytes));
            case PNG -> ofHead(kind, PngWalk.of(bytes));
            default ->
                new Refused("The file is " + kind.words() + ", whatever its name says. "
                        + "Pictures are taken as JPEG or PNG; open it and save it as JPEG.");
        };
    }

    private static PictureCheck ofHead(FileKind kind, PictureHead head) {
        if (!head.hasSize()) {
            return new Refused("The file begins like " + kind.words()
                    + " but ends before it tells its size. Copy it from the camera again.");
        }
        if (head.pixels() > MOST_PIXELS || Math.max(head.width_px(), head.height_px()) > LONGEST_EDGE_PX) {
            return new Refused("The picture is " + head.width_px() + " × " + head.height_px() + " pixels ("
                    + String.format(Locale.ROOT, "%.0f", head.pixels() / 1e6) + " million); at most "
                    + MOST_PIXELS / 1_000_000
                    + " million fit, and " + LONGEST_EDGE_PX + " along one edge. Save it with fewer pixels.");
        }
        return head.whole()
                ? new Fits(kind, head)
                : new Refused("The file is only a part of " + kind.words()
                        + ": its end is missing. Copy it from the camera again.");
    }
}
