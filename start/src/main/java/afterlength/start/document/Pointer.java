package afterlength.start.document;

/** JSON pointers (RFC 6901): {@code ""} is the whole document, {@code /strings/0/name} a place in it. */
final class Pointer {
    static final String WHOLE_DOCUMENT = "";

    private Pointer() {}

    static String child(String parent, String key) {
        return parent + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    static String child(String parent, int index) {
        return parent + "/" + index;
    }

    /** The place as a sentence begins with it: {@code strings/0/name}, or "The document". */
    static String spoken(String pointer) {
        return pointer.isEmpty()
                ? "The document"
                : pointer.substring(1).replace("~1", "/").replace("~0", "~");
    }
}
