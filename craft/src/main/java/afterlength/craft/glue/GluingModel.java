package afterlength.craft.glue;

/** Which reckoning answered. */
public enum GluingModel {
    /** The wood was thick enough for its far side not to matter. */
    HALF_SPACE("half-space"),
    /** The plate was too thin for that: film and plate were reckoned together, slice by slice. */
    PLATE("plate");

    private final String word;

    GluingModel(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
