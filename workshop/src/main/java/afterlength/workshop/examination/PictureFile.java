package afterlength.workshop.examination;

/** A file that wants to become a photograph of the shop: its bytes, and what it was called where it came from. */
public final class PictureFile {
    static final long LARGEST_BYTES = 60_000_000;

    private final String name;
    private final byte[] bytes;

    /** The bytes are taken over, not copied. */
    public PictureFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /** Used for words only; what the file is, is told from its bytes. */
    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }
}
