package afterlength.workshop.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What in a proposal differs from what was agreed. A change of weight needs the owner's word again
 * ({@code docs/sources.md#proposal-contents}); whether a change has weight is for the restorer to judge.
 */
final class SinceAgreed {
    private final Map<Long, ReckonedLine> now;
    private final PriceWords words;

    private SinceAgreed(Proposal proposal) {
        now = proposal.lines().stream().collect(Collectors.toMap(ReckonedLine::id, Function.identity()));
        words = proposal.words();
    }

    static List<String> list(Agreed agreed, Proposal proposal) {
        SinceAgreed since = new SinceAgreed(proposal);
        List<String> changes = new ArrayList<>();
        agreed.accepted().forEach(line -> since.change(line).ifPresent(changes::add));
        List<Long> offered =
                agreed.lines().stream().map(AgreementLine::treatmentId).toList();
        proposal.treatments().stream()
                .filter(treatment -> !offered.contains(treatment.id()))
                .map(treatment -> quoted(treatment.title()) + " was added afterwards and is not agreed.")
                .forEach(changes::add);
        return changes;
    }

    private Optional<String> change(AgreementLine agreed) {
        ReckonedLine line = now.get(agreed.treatmentId());
        if (line == null) {
            return Optional.of(quoted(agreed.title()) + " was agreed and has been put away since.");
        }
        String title = line.treatment().title();
        if (!title.equals(agreed.title())) {
            return Optional.of(quoted(agreed.title()) + " now reads " + quoted(title) + ".");
        }
        return line.price().equals(agreed.price())
                ? Optional.empty()
                : Optional.of(quoted(title) + " was agreed at " + words.range(agreed.price())
                        + " before tax and now comes to " + words.range(line.price()) + ".");
    }

    private static String quoted(String title) {
        return "“" + title + "”";
    }
}
