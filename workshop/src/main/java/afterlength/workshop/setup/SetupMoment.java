package afterlength.workshop.setup;

import org.jspecify.annotations.Nullable;

/** A visit has one set-up as the instrument came and one as it goes home. */
public enum SetupMoment {
    BEFORE("as it came"),
    AFTER("as it goes home");

    private final String words;

    SetupMoment(String words) {
        this.words = words;
    }

    /** As an address names it; what is not said, or not known, is the instrument as it goes home. */
    static SetupMoment of(@Nullable String name) {
        return BEFORE.name().equals(name) ? BEFORE : AFTER;
    }

    public String words() {
        return words;
    }
}
