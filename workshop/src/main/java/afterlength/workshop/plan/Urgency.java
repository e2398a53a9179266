package afterlength.workshop.plan;

/** How much an hour's lateness of a visit counts against an hour of another; the weights are our own choice. */
public enum Urgency {
    ORDINARY("as promised", 1),
    SOON("matters more than others", 2),
    URGENT("urgent", 5);

    private final String words;
    private final int weight;

    Urgency(String words, int weight) {
        this.words = words;
        this.weight = weight;
    }

    String words() {
        return words;
    }

    int weight() {
        return weight;
    }
}
