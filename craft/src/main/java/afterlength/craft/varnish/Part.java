package afterlength.craft.varnish;

/** What an ingredient is in a varnish. */
public enum Part {
    OIL("oil", true),
    RESIN("resin", true),
    OTHER_SOLID("other solid", true),
    SOLVENT("solvent", false);

    private final String words;
    private final boolean solid;

    Part(String words, boolean solid) {
        this.words = words;
        this.solid = solid;
    }

    public String words() {
        return words;
    }

    /** Whether it stays in the film when the solvent has left. */
    public boolean solid() {
        return solid;
    }
}
