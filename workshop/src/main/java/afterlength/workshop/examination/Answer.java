package afterlength.workshop.examination;

/** The answer to a question that may honestly stay open. */
public enum Answer {
    YES("yes"),
    NO("no"),
    UNKNOWN("not known");

    private final String words;

    Answer(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
