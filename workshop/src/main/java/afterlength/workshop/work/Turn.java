package afterlength.workshop.work;

import java.time.Instant;
import java.util.Optional;

/** What an instrument asks of hands at a given time. */
public sealed interface Turn {
    /** A step is begun and not yet done. */
    record InHand(Step step, Instant since) implements Turn {}

    /**
     * A step can be begun.
     *
     * @param after the step done last, when it had a wait that is now over and somebody should check
     */
    record Next(Step step, Optional<StepNow> after) implements Turn {}

    /**
     * Something dries or is clamped.
     *
     * @param until when the last of it has had its usual wait
     * @param next the step that follows then
     */
    record Held(Instant until, Optional<Step> next) implements Turn {}

    /** Every step is done and has had its wait. */
    record AllDone(Optional<StepNow> after) implements Turn {}

    /** There is no step. */
    record NoSteps() implements Turn {}
}
