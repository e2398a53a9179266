package afterlength.craft.setup;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Each string, played alone at one place with one force while its neighbours are open; from bass to treble. */
public record BowReading(BowPlace place, List<BowedString> strings, List<Caveat> caveats) implements BowAnswer {
    public BowReading {
        strings = List.copyOf(strings);
        caveats = List.copyOf(caveats);
    }

    /** The string with the least room; empty when none has two limits. */
    public Optional<BowedString> findTightest() {
        return strings.stream()
                .filter(string -> string.findOpening_deg().isPresent())
                .min(Comparator.comparingDouble(
                        string -> string.findOpening_deg().orElseThrow()));
    }
}
