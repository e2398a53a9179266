package afterlength.workshop.closing;

/** How a thing is recorded before it is covered. */
enum HowRecorded {
    PICTURE("Picture"),
    MEASURE("Measure"),
    NOTE("Write down");

    private final String words;

    HowRecorded(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
