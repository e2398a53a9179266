package afterlength.workshop.agreement;

import afterlength.workshop.desk.Choice;
import java.util.Arrays;
import java.util.List;

/** The answers that forms of this stage offer. */
final class AgreementChoices {
    static final List<Choice> TIERS = Arrays.stream(Tier.values())
            .map(tier -> new Choice(tier.name(), tier.words()))
            .toList();
    static final List<Choice> UNDOING = Arrays.stream(Undoing.values())
            .map(undoing -> new Choice(undoing.name(), undoing.words()))
            .toList();
    static final List<Choice> MEANS = Arrays.stream(Means.values())
            .map(means -> new Choice(means.name(), means.words()))
            .toList();

    private AgreementChoices() {}

    static List<Choice> hands(List<String> hands) {
        return hands.stream().map(hand -> new Choice(hand, hand)).toList();
    }
}
