package afterlength.workshop.work;

import afterlength.workshop.desk.Sent;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SentOnce;
import java.time.Instant;
import java.util.Optional;
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

        /** This very tap was taken before; its answer did not reach the screen. */
        record Before(Step step, String answer) implements Tapped {}

        /** Nothing was written, since the step already stood there. */
        record NotNow(Step step, StepStatus status) implements Tapped {}
    }

    public Tapped start(long stepId, String hand, Instant now) {
        return start(stepId, hand, Sent.at(now), now);
    }

    /** A start whose tap may have waited on a screen. */
    Tapped start(long stepId, String hand, Sent sent, Instant now) {
        return tap(
                stepId,
                sent,
                now,
                step -> step.status() instanceof StepStatus.NotBegun,
                step -> Writing.started(step.step(), sent.at(), hand));
    }

    /** Done, with the minutes counted from the start; without a start the minutes stay open. */
    public Tapped done(long stepId, String hand, Instant now) {
        return done(stepId, hand, Sent.at(now), now);
    }

    /** A done whose tap may have waited on a screen. */
    Tapped done(long stepId, String hand, Sent sent, Instant now) {
        return tap(
                stepId,
                sent,
                now,
                step -> step.status() instanceof StepStatus.NotBegun || step.status() instanceof StepStatus.Begun,
                step -> Writing.done(step.step(), sent.at(), HandsOnCount.from(step.status(), sent.at()), hand));
    }

    private Tapped tap(
            long stepId,
            Sent sent,
            Instant now,
            Function<StepNow, Boolean> allowed,
            Function<StepNow, Writing> writing) {
        return ledger.write(handle -> {
            StepNow step = stepNow(handle, stepId, now);
            Optional<String> before = SentOnce.find(handle, sent.key());
            if (before.isPresent()) {
                return new Tapped.Before(step.step(), before.get());
            }
            Tapped tapped = allowed.apply(step)
                    ? new Tapped.Kept(DiaryStore.add(handle, writing.apply(step), null, false, now))
                    : new Tapped.NotNow(step.step(), step.status());
            SentOnce.keep(handle, sent.key(), answer(tapped), now);
            return tapped;
        });
    }

    /** What the page says of it, as the end of an address. */
    static String answer(Tapped tapped) {
        if (tapped instanceof Tapped.Kept kept) {
            return "?entry=" + kept.entry().id();
        }
        return tapped instanceof Tapped.NotNow notNow
                ? "?already=" + notNow.step().id()
                : ((Tapped.Before) tapped).answer();
    }

    static long visitOf(Tapped tapped) {
        if (tapped instanceof Tapped.Kept kept) {
            return kept.entry().writing().visitId();
        }
        return tapped instanceof Tapped.NotNow notNow
                ? notNow.step().visitId()
                : ((Tapped.Before) tapped).step().visitId();
    }

    private static StepNow stepNow(Handle handle, long stepId, Instant now) {
        Step step = StepStore.get(handle, stepId);
        return new StepNow(step, StepStatus.of(step, DiaryStore.listNow(handle, step.visitId()), now));
    }
}
