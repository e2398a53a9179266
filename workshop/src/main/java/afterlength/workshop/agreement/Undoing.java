package afterlength.workshop.agreement;

/** Whether a treatment can be taken back, in three plain answers; how, is told in words beside it. */
public enum Undoing {
    YES("can be taken back"),
    PARTLY("can be taken back in part"),
    NO("cannot be undone");

    private final String words;

    Undoing(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
