package afterlength.workshop.plan;

import java.util.Optional;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * A plan that was made and not taken yet: the old order moved along, at once; and a better one, which is looked for behind the pages. Kept
 * in memory only: whoever asks after a restart has it planned anew.
 */
final class Draft {
    private final String id;
    private final String because;
    private final ShopWork work;
    private final KeptPlan kept;
    private final PlanAnswer moved;
    private volatile @Nullable PlanAnswer better;
    private volatile boolean stopped;
    private volatile @Nullable Future<?> search;

    Draft(String id, String because, ShopWork work, KeptPlan kept, PlanAnswer moved) {
        this.id = id;
        this.because = because;
        this.work = work;
        this.kept = kept;
        this.moved = moved;
    }

    String id() {
        return id;
    }

    String because() {
        return because;
    }

    ShopWork work() {
        return work;
    }

    KeptPlan kept() {
        return kept;
    }

    PlanAnswer moved() {
        return moved;
    }

    void searchedBy(Future<?> running) {
        search = running;
    }

    void end(PlanAnswer found) {
        better = found;
    }

    /** Nobody waits for it any longer. */
    void stop() {
        stopped = true;
        Future<?> running = search;
        if (running != null) {
            running.cancel(true);
        }
    }

    boolean stopped() {
        return stopped && better == null;
    }

    boolean working() {
        return better == null && !stopped;
    }

    Optional<CheckedPlan> findMoved() {
        return moved instanceof PlanAnswer.Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }

    /** The plan that was found, when it costs less than the old order moved along. */
    Optional<CheckedPlan> findBetter() {
        if (!(better instanceof PlanAnswer.Planned found)) {
            return Optional.empty();
        }
        return findMoved().isPresent()
                        && found.plan().plan().equals(findMoved().get().plan())
                ? Optional.empty()
                : Optional.of(found.plan());
    }
}
