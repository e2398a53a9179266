package afterlength.workshop.plan;

import afterlength.workshop.work.Step;
import afterlength.workshop.work.StepNow;
import afterlength.workshop.work.StepStatus;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Cuts the open steps of one visit into pieces and puts them in the order the work page has: hands come one step after another; a step
 * waits besides for all waits before it that bar the instrument or belong to the same treatment.
 *
 * <p>Of a long step only the last piece is clamped, glued or waits. A wait that leaves the instrument free is a piece of its own.
 */
final class Cutting {
    /** What is begun and has had its usual time is thought to need this much more; our own choice. */
    static final int OVERRUN_MIN = 15;

    private static final StepNeeds NOTHING = new StepNeeds(false, false, false);

    private final BenchDraft draft;
    private final int job;
    private final List<StepNow> steps;
    private final Pace pace;

    /** The last hands of the steps so far. */
    private List<Integer> hands = List.of();

    private final List<Wait> waits = new ArrayList<>();

    /** A wait that later steps may have to sit out. */
    private record Wait(int piece, Step step) {
        boolean holds(Step next) {
            return step.blocksInstrument()
                    || (step.treatmentId() != null && step.treatmentId().equals(next.treatmentId()));
        }
    }

    Cutting(BenchDraft draft, int job, List<StepNow> steps, Pace pace) {
        this.draft = draft;
        this.job = job;
        this.steps = List.copyOf(steps);
        this.pace = pace;
    }

    int hands_min() {
        return steps.stream().mapToInt(step -> pace.hands_min(step.step())).sum();
    }

    int wait_min() {
        return steps.stream().mapToInt(step -> pace.wait_min(step.step())).sum();
    }

    void cut(SharedBench shop) {
        for (StepNow step : steps) {
            if (step.status() instanceof StepStatus.Waiting waiting) {
                goOnWaiting(shop, step.step(), waiting);
            } else if (step.status() instanceof StepStatus.Begun begun) {
                goOn(shop, step.step(), begun.since());
            } else {
                begin(shop, step.step());
            }
        }
    }

    private void goOnWaiting(SharedBench shop, Step step, StepStatus.Waiting waiting) {
        int from = shop.time().minute(waiting.doneAt());
        int until = BenchTime.whole(shop.time().minute(waiting.until()) + 1.0);
        int piece = draft.piece(job, step, 0)
                .lasting(0, Math.max(0, until - from))
                .by(shop.everybody(), -1)
                .holdingTheInstrument(step.blocksInstrument())
                .needing(needs(shop, step))
                .begunAt(from, 0)
                .add();
        waits.add(new Wait(piece, step));
    }

    /** Hands are at it: what they still need goes on until they go home, and the rest follows. */
    private void goOn(SharedBench shop, Step step, Instant since) {
        int person = shop.begunBy(step, since);
        int from = shop.time().minute(since);
        int rest = Math.max(OVERRUN_MIN, pace.hands_min(step) - shop.worked_min(person, since));
        int until = Math.min(shop.goesHome(person), shop.now() + rest);
        int later = BenchTime.whole(rest - (until - shop.now()));
        boolean whole = later <= 0;
        int piece = draft.piece(job, step, 0)
                .lasting(until - from, whole ? barring_min(step) : 0)
                .by(shop.everybody(), -1)
                .holdingTheInstrument(true)
                .needing(whole ? needs(shop, step) : NOTHING)
                .begunAt(from, person)
                .add();
        finish(shop, step, whole ? piece : chunks(shop, step, later, List.of(piece), piece, 1));
    }

    private void begin(SharedBench shop, Step step) {
        int length = pace.hands_min(step);
        int wait = pace.wait_min(step);
        if (length == 0 && wait > 0) {
            waitAlone(shop, step, wait);
        } else {
            finish(shop, step, chunks(shop, step, Math.max(BenchTime.GRID_MIN, length), before(step), -1, 0));
        }
    }

    private void waitAlone(SharedBench shop, Step step, int wait_min) {
        int piece = draft.piece(job, step, 0)
                .lasting(0, wait_min)
                .by(shop.everybody(), -1)
                .holdingTheInstrument(step.blocksInstrument())
                .needing(needs(shop, step))
                .after(before(step))
                .add();
        waits.add(new Wait(piece, step));
    }

    /** The pieces of a step from this part on; answers the last, which is clamped, glued and, where it bars the instrument, waits. */
    private int chunks(SharedBench shop, Step step, int hands_min, List<Integer> before, int sameAs, int firstPart) {
        StepNeeds needs = needs(shop, step);
        int person = sameAs < 0 ? -1 : draft.begun.get(sameAs).person();
        int most = Math.min(StepCut.MOST_MIN, shop.most_min(needs.hotGlue(), person));
        List<Integer> lengths = StepCut.of(hands_min, most);
        int able = shop.able(Collections.max(lengths), needs.hotGlue());
        int wait = barring_min(step);
        List<Integer> after = before;
        int first = sameAs;
        int piece = -1;
        for (int n = 0; n < lengths.size(); n++) {
            boolean last = n == lengths.size() - 1;
            piece = draft.piece(job, step, firstPart + n)
                    .lasting(lengths.get(n), last ? wait : 0)
                    .by(able == 0 ? shop.everybody() : able, first)
                    .holdingTheInstrument(true)
                    .needing(last ? needs : NOTHING)
                    .after(after)
                    .add();
            first = first < 0 ? piece : first;
            after = List.of(piece);
        }
        return piece;
    }

    /** A wait that bars the instrument hangs on the last hands; any other lies beside what follows. */
    private void finish(SharedBench shop, Step step, int last) {
        int wait = pace.wait_min(step);
        hands = List.of(last);
        if (barring_min(step) > 0) {
            waits.add(new Wait(last, step));
        } else if (wait > 0) {
            int piece = draft.piece(job, step, draft.pieces.get(last).part() + 1)
                    .lasting(0, wait)
                    .by(shop.everybody(), -1)
                    .needing(needs(shop, step))
                    .rightAfter(last)
                    .add();
            waits.add(new Wait(piece, step));
        }
    }

    private int barring_min(Step step) {
        return step.blocksInstrument() ? pace.wait_min(step) : 0;
    }

    private List<Integer> before(Step step) {
        List<Integer> before = new ArrayList<>(hands);
        waits.stream().filter(wait -> wait.holds(step)).map(Wait::piece).forEach(before::add);
        return before;
    }

    /** Where the shop has no cupboard, nothing waits for a place in it. */
    private static StepNeeds needs(SharedBench shop, Step step) {
        StepNeeds needs = StepNeeds.of(step);
        boolean cupboard = needs.cupboard() && shop.work().rules().cupboardPlaces() > 0;
        return new StepNeeds(needs.hotGlue(), needs.clamp(), cupboard);
    }
}
