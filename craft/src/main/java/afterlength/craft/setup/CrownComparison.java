package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Several crowns on the same instrument, side by side over the same map of the bow, in the order they were named. */
public record CrownComparison(List<CrownTrial> trials) {
    public CrownComparison {
        trials = List.copyOf(trials);
    }

    public static CrownComparison of(BridgeInputs inputs, BowMapAxes axes, List<Crown> crowns) {
        return new CrownComparison(
                crowns.stream().map(crown -> trial(inputs, axes, crown)).toList());
    }

    private static CrownTrial trial(BridgeInputs inputs, BowMapAxes axes, Crown crown) {
        BridgeAnswer answer = Bridge.shape(inputs.withCrown(crown));
        if (answer instanceof BridgeShape shape) {
            BowMapAnswer map = BowMap.of(shape, axes);
            return map instanceof BowMap drawn
                    ? new CrownTried(crown, shape, drawn)
                    : new CrownNotPossible(crown, ((BowRefused) map).problems());
        }
        List<Problem> problems = ((BridgeRefused) answer).problems();
        return new CrownNotPossible(crown, problems);
    }

    /** The crown with the most room at its tightest place. */
    public Optional<CrownTried> findRoomiest() {
        return trials.stream()
                .flatMap(trial -> trial instanceof CrownTried tried ? Stream.of(tried) : Stream.empty())
                .filter(tried -> tried.findOpening_deg().isPresent())
                .max(Comparator.comparingDouble(tried -> tried.findOpening_deg().orElseThrow()));
    }
}
