package afterlength.workshop.examination;

/** When, seen from the work, a picture or a measure was taken. */
public enum Moment {
    BEFORE("before work", "Before work"),
    DURING("during work", "During work"),
    AFTER("after work", "After work");

    private final String words;
    private final String heading;

    Moment(String words, String heading) {
        this.words = words;
        this.heading = heading;
    }

    public String heading() {
        return heading;
    }

    public String words() {
        return words;
    }
}
