package afterlength.workshop.agreement;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** What an owner may choose: to leave the instrument as it is, one of three ready suggestions, or lines of their own choice. */
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

    /** The smallest way that contains a line: what was done before the agreement is in every one. */
    static Scope firstWith(Treatment line) {
        return TreatmentTemplates.partOf(line) == JobPart.BEFORE ? LEAVE : of(line.tier());
    }

    /** The name of what was accepted: the smallest way that holds exactly these lines, the owner's own choice when none does. */
    static Scope of(List<Treatment> offered, Set<Long> accepted) {
        if (offered.stream().noneMatch(line -> accepted.contains(line.id()) && firstWith(line) != LEAVE)) {
            return LEAVE;
        }
        return Arrays.stream(values())
                .filter(scope ->
                        offered.stream().allMatch(line -> scope.contains(line) == accepted.contains(line.id())))
                .findFirst()
                .orElse(OWN_CHOICE);
    }

    private boolean contains(Treatment line) {
        return firstWith(line).compareTo(this) <= 0;
    }
}
