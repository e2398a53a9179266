package afterlength.workshop.agreement;

import afterlength.workshop.ledger.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** The ways open to the owner: to leave the instrument as it is, and three suggestions, each of which contains the one before. */
final class Offers {
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
        offers.add(offer(Scope.LEAVE, "Nothing is done. It stays as it is and as it was found.", line -> false, true));
        Arrays.stream(Tier.values()).map(this::suggestion).forEach(offers::add);
        return offers;
    }

    Reckoning sumOf(Set<Long> accepted) {
        return Reckoning.of(
                lines.stream().filter(line -> accepted.contains(line.id())).toList(), settings);
    }

    private ScopeOffer suggestion(Tier tier) {
        boolean adds = lines.stream().anyMatch(line -> line.treatment().tier() == tier);
        return offer(
                Scope.of(tier),
                tier.sentence(),
                line -> tier.includes(line.treatment().tier()),
                adds);
    }

    private ScopeOffer offer(Scope scope, String sentence, Predicate<ReckonedLine> contains, boolean adds) {
        List<ReckonedLine> contained = lines.stream().filter(contains).toList();
        List<ReckonedLine> left = lines.stream().filter(contains.negate()).toList();
        return new ScopeOffer(scope, sentence, contained, left, Reckoning.of(contained, settings), adds);
    }
}
