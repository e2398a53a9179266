package afterlength.workshop.closing;

import afterlength.workshop.agreement.AgreementLine;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentStore;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the agreed treatments of a visit will cover, treatment by treatment, with what is recorded already. */
record LastChance(List<Group> groups) {
    /** A thing with the tick that holds; null or not done while it is open. */
    record Item(CoveredThing thing, @Nullable Tick tick) {
        boolean done() {
            return tick != null && tick.done();
        }
    }

    /** The things that one treatment covers. */
    record Group(String treatment, List<Item> items) {}

    static LastChance of(long visitId, AgreementStore agreements, TreatmentStore treatments, Map<String, Tick> ticks) {
        List<AgreementLine> lines = agreements
                .findNow(visitId)
                .map(agreement -> agreements.listLines(agreement.id()))
                .orElse(List.of());
        Map<Long, String> templates = Stream.concat(
                        treatments.listOf(visitId).stream(), treatments.listPutAway(visitId).stream())
                .collect(Collectors.toMap(Treatment::id, Treatment::template));
        return new LastChance(lines.stream()
                .filter(AgreementLine::accepted)
                .map(line -> group(line.title(), templates.getOrDefault(line.treatmentId(), ""), ticks))
                .filter(group -> !group.items().isEmpty())
                .toList());
    }

    private static Group group(String title, String template, Map<String, Tick> ticks) {
        return new Group(
                title,
                CoveredThings.listFor(template).stream()
                        .map(thing -> new Item(thing, ticks.get(thing.key())))
                        .toList());
    }

    List<Item> open() {
        return groups.stream()
                .flatMap(group -> group.items().stream())
                .filter(item -> !item.done())
                .toList();
    }

    int count() {
        return groups.stream().mapToInt(group -> group.items().size()).sum();
    }

    /** In one sentence. */
    String words() {
        int open = open().size();
        if (count() == 0) {
            return "Nothing that is agreed covers anything.";
        }
        return open == 0
                ? "Everything that will be covered is recorded."
                : open + " of " + count() + " things are not recorded yet and will be covered.";
    }
}
