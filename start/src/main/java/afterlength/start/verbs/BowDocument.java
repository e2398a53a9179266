package afterlength.start.verbs;

import afterlength.craft.setup.BowPlace;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.HashMap;
import java.util.Map;

/** The place of the bow, as it is written beside the keys of the bridge. */
record BowDocument(BowPlace place) {
    /** Roughly the ends; {@code craft} judges more closely, but only once there is a bridge to judge by. */
    private static final Range DISTANCE = Range.positive(2000, "mm");

    private static final Range FORCE = Range.between(0, 50, "N");

    static BowDocument read(DocumentReader document) {
        DocumentReader bow = document.get("bow").asObject();
        return new BowDocument(new BowPlace(
                bow.get("distance_mm").asNumber(DISTANCE),
                bow.get("force_N").asNumber(FORCE),
                document.find("stopped_at_mm")
                        .map(DocumentValue::asObject)
                        .map(BowDocument::stops)
                        .orElse(Map.of())));
    }

    private static Map<String, Double> stops(DocumentReader stopped) {
        Map<String, Double> stops = new HashMap<>();
        stopped.keys().forEach(name -> stops.put(name, stopped.get(name).asNumber(Range.any("mm"))));
        return stops;
    }
}
