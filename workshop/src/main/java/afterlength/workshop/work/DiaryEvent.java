package afterlength.workshop.work;

/** What a diary entry tells. */
public enum DiaryEvent {
    STARTED("started"),
    DONE("done"),
    NOT_DRY("not dry or not ready yet"),
    NOTE("note");

    private final String words;

    DiaryEvent(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
