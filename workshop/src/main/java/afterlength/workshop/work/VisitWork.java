package afterlength.workshop.work;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The steps of one visit and where each stands. The next step is the first in the restorer's order that has not been begun; it has
 * to wait while an earlier step of the same treatment dries, or while any step dries that forbids other work on the instrument.
 *
 * <p>Nothing is offered out of its order, though a person may begin it so: the program does not know which steps could change places.
 */
public record VisitWork(List<StepNow> steps) {

    /** The steps that are not dropped, as the diary tells them at that time. */
    public static VisitWork of(List<Step> steps, List<DiaryEntry> entries, Instant at) {
        return new VisitWork(steps.stream()
                .filter(step -> !step.dropped())
                .sorted(Comparator.comparingInt(Step::position).thenComparingLong(Step::id))
                .map(step -> new StepNow(step, StepStatus.of(step, entries, at)))
                .toList());
    }

    public Turn turn() {
        if (steps.isEmpty()) {
            return new Turn.NoSteps();
        }
        Optional<Turn> inHand = findInHand();
        return inHand.isPresent() ? inHand.get() : afterHands();
    }

    /** What dries or is clamped, the first to come free first. */
    public List<StepNow> listWaiting() {
        return steps.stream()
                .filter(step -> step.status() instanceof StepStatus.Waiting)
                .sorted(Comparator.comparing(VisitWork::until))
                .toList();
    }

    private Turn afterHands() {
        Optional<Step> next = findFirstNotBegun();
        List<StepNow> holding = listWaiting().stream()
                .filter(step -> next.isEmpty()
                        || step.step().blocksInstrument()
                        || step.step().sameTreatment(next.get()))
                .toList();
        if (!holding.isEmpty()) {
            return new Turn.Held(until(holding.get(holding.size() - 1)), next);
        }
        return next.<Turn>map(step -> new Turn.Next(step, findLastWait()))
                .orElseGet(() -> new Turn.AllDone(findLastWait()));
    }

    private Optional<Turn> findInHand() {
        return steps.stream()
                .flatMap(step -> step.status() instanceof StepStatus.Begun begun
                        ? Optional.<Turn>of(new Turn.InHand(step.step(), begun.since())).stream()
                        : Optional.<Turn>empty().stream())
                .findFirst();
    }

    private Optional<Step> findFirstNotBegun() {
        return steps.stream()
                .filter(step -> step.status() instanceof StepStatus.NotBegun)
                .map(StepNow::step)
                .findFirst();
    }

    /** The step done last, when it had a wait that is over. */
    private Optional<StepNow> findLastWait() {
        return steps.stream()
                .filter(step -> step.status() instanceof StepStatus.Finished)
                .max(Comparator.comparing(step -> ((StepStatus.Finished) step.status()).doneAt()))
                .filter(step -> step.status() instanceof StepStatus.Finished finished
                        && finished.freeAt().isAfter(finished.doneAt()));
    }

    private static Instant until(StepNow step) {
        return ((StepStatus.Waiting) step.status()).until();
    }
}
