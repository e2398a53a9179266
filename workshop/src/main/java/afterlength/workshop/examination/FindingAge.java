package afterlength.workshop.examination;

/** Whether damage looks fresh (clean edges) or old (dirt in it, glue, worn edges); a look, not a date. */
public enum FindingAge {
    FRESH("fresh"),
    OLD("old"),
    UNKNOWN("age not known");

    private final String words;

    FindingAge(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
