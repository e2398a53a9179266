package afterlength.workshop.instrument;

/** The family. A size is never looked up from this: it is measured. */
public enum InstrumentKind {
    VIOLIN("violin"),
    VIOLA("viola"),
    CELLO("cello"),
    DOUBLE_BASS("double bass"),
    OTHER("other bowed instrument");

    private final String words;

    InstrumentKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
