package afterlength.sight.picture;

/** A file that says it is a picture: its bytes, and what it was called where it came from. */
public final class PictureFile {
    public static final long LARGEST_BYTES = 60_000_000;

    private final String name;
    private final byte[] bytes;

    /** The bytes are taken over, not copied. */
    public PictureFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /** Used for words only; what the file is, is told from its bytes. */
    public String name() {
        return name;
    }

    public byte[] bytes() {
        return bytes;
    }
}
