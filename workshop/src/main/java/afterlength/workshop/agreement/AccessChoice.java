package afterlength.workshop.agreement;

/** What the person chose for a crack; to leave cleats out is one of the answers. */
public enum AccessChoice {
    UNDECIDED("not decided yet"),
    CLEATS("glue it and lay the cleats through the sound-hole"),
    NO_CLEATS("glue it, no cleats: it is short, clean and closes well"),
    OPEN_TOP("open the top");

    private final String words;

    AccessChoice(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
