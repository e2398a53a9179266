package afterlength.workshop.work;

import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** Start and Done by one tap. A second tap on the same button, from wet fingers or a second tablet, writes nothing. */
public final class OneTap {
    private final Ledger ledger;

    public OneTap(Ledger ledger) {
        this.ledger = ledger;
    }

    /** What came of a tap. */
    public sealed interface Tapped {
        record Kept(DiaryEntry entry) implements Tapped {}

        /** Nothing was written, since the step already stood there. */
        record NotNow(Step step, StepStatus status) implements Tapped {}
    }

    public Tapped start(long stepId, String hand, Instant now) {
        return tap(
                stepId,
                now,
                step -> step.status() instanceof StepStatus.NotBegun,
                step -> Writing.started(step.step(), now, hand));
    }

    /** Done, with the minutes counted from the start; without a start the minutes stay open. */
    public Tapped done(long stepId, String hand, Instant now) {
        return tap(
                stepId,
                now,
                step -> step.status() instanceof StepStatus.NotBegun || step.status() instanceof StepStatus.Begun,
                step -> Writing.done(step.step(), now, HandsOnCount.from(step.status(), now), hand));
    }

    private Tapped tap(
            long stepId, Instant now, Function<StepNow, Boolean> allowed, Function<StepNow, Writing> writing) {
        return ledger.write(handle -> {
            StepNow step = stepNow(handle, stepId, now);
            return allowed.apply(step)
                    ? new Tapped.Kept(DiaryStore.add(handle, writing.apply(step), null, false, now))
                    : new Tapped.NotNow(step.step(), step.status());
        });
    }

    private static StepNow stepNow(Handle handle, long stepId, Instant now) {
        Step step = StepStore.get(handle, stepId);
        return new StepNow(step, StepStatus.of(step, DiaryStore.listNow(handle, step.visitId()), now));
    }
}
