package afterlength.workshop.agreement;

/** How far a treatment goes. Each tier stands on the ones before it. */
public enum Tier {
    PLAYING_ORDER("playing order", "It plays, with its age showing."),
    SOUND("sound", "It plays, and what would soon give way is mended too."),
    FULL("full restoration", "As sound; and losses no longer catch the eye.");

    private final String words;
    private final String sentence;

    Tier(String words, String sentence) {
        this.words = words;
        this.sentence = sentence;
    }

    public String words() {
        return words;
    }

    /** For the owner. */
    public String sentence() {
        return sentence;
    }

    /** Whether a scope of this tier contains treatments of the other. */
    public boolean includes(Tier other) {
        return other.compareTo(this) <= 0;
    }
}
