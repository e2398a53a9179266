package afterlength.workshop.glue;

/** Where the air of a gluing was read. */
public enum AirFrom {
    TYPED("read by hand"),
    LOGGER("from the logger"),
    NONE("not known");

    private final String words;

    AirFrom(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
