package afterlength.workshop.setup;

/** A visit has one set-up as the instrument came and one as it goes home. */
public enum SetupMoment {
    BEFORE("as it came"),
    AFTER("as it goes home");

    private final String words;

    SetupMoment(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
