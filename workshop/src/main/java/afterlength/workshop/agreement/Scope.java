package afterlength.workshop.agreement;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** What an owner may choose: one of three ready suggestions, to leave the instrument as it is, or lines of their own choice. */
public enum Scope {
    LEAVE("leave as it is"),
    PLAYING_ORDER("playing order"),
    SOUND("sound"),
    FULL("full restoration"),
    OWN_CHOICE("the owner’s own choice of lines");

    private final String words;

    Scope(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static Scope of(Tier tier) {
        return valueOf(tier.name());
    }

    /** The name of what was accepted: the smallest suggestion that holds exactly these lines. */
    static Scope of(List<Treatment> offered, Set<Long> accepted) {
        if (accepted.isEmpty()) {
            return LEAVE;
        }
        return Arrays.stream(Tier.values())
                .filter(tier ->
                        offered.stream().allMatch(line -> tier.includes(line.tier()) == accepted.contains(line.id())))
                .map(Scope::of)
                .findFirst()
                .orElse(OWN_CHOICE);
    }
}
