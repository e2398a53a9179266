package afterlength.workshop.agreement;

/** How the owner's word reached the workshop. */
public enum Means {
    IN_PERSON("in person"),
    LETTER("by letter"),
    E_MAIL("by e-mail"),
    TELEPHONE("by telephone");

    private final String words;

    Means(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
