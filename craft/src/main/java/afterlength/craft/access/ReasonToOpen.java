package afterlength.craft.access;

import java.util.ArrayList;
import java.util.List;

/**
 * Why the work would not go through the sound-hole: one plain rule each, with the fact that triggered it. All are common practice
 * (docs/sources.md#cleat-practice); against them stands the old advice never to open before all other means have failed
 * (docs/sources.md#petherick-1903). Advice for a person who decides, never a verdict.
 */
public sealed interface ReasonToOpen {
    /** Edges out of level by more than this are not closed by cleats. Source: docs/sources.md#cleat-practice. */
    double LEVEL_MM = 0.2;

    /** So many cleats out of reach may be left out or pressed without a clamp; our own choice. */
    int OUT_OF_REACH_BORNE = 1;

    /** The load of the post works on the crack from within. */
    record UnderPost() implements ReasonToOpen {}

    /** The bar hides the crack and would hold it open. */
    record UnderBar() implements ReasonToOpen {}

    /** The edges stand out of level and do not close dry. */
    record OutOfLevel(double step_mm) implements ReasonToOpen {}

    /** Glue does not hold on dirt. */
    record NotCleanable() implements ReasonToOpen {}

    /** Cleats that cannot be placed and pressed. */
    record OutOfReach(int cleats) implements ReasonToOpen {}

    /** All that speak for opening; none means that nothing of what was told does. */
    static List<ReasonToOpen> list(CrackFacts facts) {
        List<ReasonToOpen> reasons = new ArrayList<>();
        if (facts.underPost()) {
            reasons.add(new UnderPost());
        }
        if (facts.underBar()) {
            reasons.add(new UnderBar());
        }
        if (facts.step_mm() > LEVEL_MM && !facts.closesDry()) {
            reasons.add(new OutOfLevel(facts.step_mm()));
        }
        if (!facts.cleanable()) {
            reasons.add(new NotCleanable());
        }
        if (facts.cleatsOutOfReach() > OUT_OF_REACH_BORNE) {
            reasons.add(new OutOfReach(facts.cleatsOutOfReach()));
        }
        return List.copyOf(reasons);
    }
}
