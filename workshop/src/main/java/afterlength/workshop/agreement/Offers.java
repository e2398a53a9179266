package afterlength.workshop.agreement;

import afterlength.workshop.ledger.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The ways open to the owner: to leave the instrument as it is, and three suggestions, each of which contains the one before. */
final class Offers {
    private static final String LEFT = "Nothing is done to it. It stays as it was found.";

    private final List<ReckonedLine> lines;
    private final Settings settings;

    private Offers(List<ReckonedLine> lines, Settings settings) {
        this.lines = lines;
        this.settings = settings;
    }

    static Offers of(List<Treatment> treatments, Settings settings) {
        return new Offers(
                treatments.stream()
                        .map(treatment -> ReckonedLine.of(treatment, settings))
                        .toList(),
                settings);
    }

    List<ReckonedLine> lines() {
        return lines;
    }

    /** Leave as it is first, then the suggestions from the smallest to the largest. */
    List<ScopeOffer> list() {
        List<ScopeOffer> offers = new ArrayList<>();
        offers.add(offer(Scope.LEAVE, LEFT));
        for (Tier tier : Tier.values()) {
            offers.add(offer(Scope.of(tier), tier.sentence()));
        }
        return offers;
    }

    Reckoning sumOf(Set<Long> accepted) {
        return Reckoning.of(
                lines.stream().filter(line -> accepted.contains(line.id())).toList(), settings);
    }

    private ScopeOffer offer(Scope scope, String sentence) {
        List<ReckonedLine> contained =
                lines.stream().filter(line -> first(line).compareTo(scope) <= 0).toList();
        List<ReckonedLine> later =
                lines.stream().filter(line -> first(line).compareTo(scope) > 0).toList();
        Scope next = later.stream().map(Offers::first).min(Scope::compareTo).orElse(scope);
        List<ReckonedLine> left = with(next, later);
        boolean goesOn = left.size() < later.size();
        return new ScopeOffer(
                scope, sentence, contained, with(scope, contained), left, goesOn, Reckoning.of(contained, settings));
    }

    private static List<ReckonedLine> with(Scope scope, List<ReckonedLine> lines) {
        return lines.stream().filter(line -> first(line) == scope).toList();
    }

    private static Scope first(ReckonedLine line) {
        return Scope.firstWith(line.treatment());
    }
}
