package afterlength.workshop.setup;

import afterlength.craft.setup.BowAnswer;
import afterlength.craft.setup.BowClearance;
import afterlength.craft.setup.BowMap;
import afterlength.craft.setup.BowMapAnswer;
import afterlength.craft.setup.BowMapAxes;
import afterlength.craft.setup.BowPlace;
import afterlength.craft.setup.BowReading;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.StringPull;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The bow on this bridge: at the one place that was typed, over every stop at that distance and force, and over the usual distances
 * and forces. What was not typed is a sixteenth of the string from the bridge, and 1 N where all tensions are known, else none.
 *
 * @param place each string alone at the place that was typed
 * @param map strings and stops there
 * @param survey the same over the usual distances and forces
 */
record BenchBow(BowPlace at, int semitones, BowAnswer place, BowMapAnswer map, BowMapAnswer survey) {
    /** Within normal playing; docs/sources.md#askenfelt. */
    private static final double USUAL_FORCE_N = 1;

    private static final double USUAL_PART = 1 / 16.0;

    static BenchBow of(BridgeShape shape, SetupBench bench) {
        double length_mm = shape.inputs().speakingLength_mm();
        double distance_mm = bench.find(BenchReading.BOW_DISTANCE).orElse(length_mm * USUAL_PART);
        double force_N = bench.find(BenchReading.BOW_FORCE).orElse(tensionsKnown(shape) ? USUAL_FORCE_N : 0);
        int semitones = (int) Math.round(bench.find(BenchReading.BOW_SEMITONES).orElse(0.0));
        BowPlace at = new BowPlace(distance_mm, force_N, stops(shape, semitones));
        BowMapAxes usual = usual(shape);
        BowMapAxes here =
                new BowMapAxes(usual.semitones(), List.of(distance_mm), List.of(force_N), usual.farthestPart());
        return new BenchBow(at, semitones, BowClearance.at(shape, at), BowMap.of(shape, here), BowMap.of(shape, usual));
    }

    /** The usual map, with a bow that does not press while a tension is not known. */
    static BowMapAxes usual(BridgeShape shape) {
        BowMapAxes usual = BowMapAxes.usual(shape.inputs().speakingLength_mm());
        return tensionsKnown(shape)
                ? usual
                : new BowMapAxes(usual.semitones(), usual.distances_mm(), List.of(0.0), usual.farthestPart());
    }

    Optional<BowReading> findReading() {
        return place instanceof BowReading reading ? Optional.of(reading) : Optional.empty();
    }

    Optional<BowMap> findMap() {
        return map instanceof BowMap drawn ? Optional.of(drawn) : Optional.empty();
    }

    Optional<BowMap> findSurvey() {
        return survey instanceof BowMap drawn ? Optional.of(drawn) : Optional.empty();
    }

    private static boolean tensionsKnown(BridgeShape shape) {
        return shape.inputs().strings().stream().noneMatch(string -> string.pull() instanceof StringPull.Unknown);
    }

    private static Map<String, Double> stops(BridgeShape shape, int semitones) {
        Map<String, Double> stops = new HashMap<>();
        if (semitones > 0) {
            double stopped_mm = shape.inputs().speakingLength_mm() * Math.pow(2, -semitones / 12.0);
            shape.strings().forEach(string -> stops.put(string.name(), stopped_mm));
        }
        return stops;
    }
}
