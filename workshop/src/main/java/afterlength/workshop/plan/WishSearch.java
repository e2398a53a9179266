package afterlength.workshop.plan;

import afterlength.planner.engine.Effort;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;

/**
 * Plans what is and then each wish with the same effort, one behind the other. What was planned before counts for neither, so that what could be
 * sooner is not held where it stood; what has begun stays.
 */
final class WishSearch {
    private final List<WishAnswer> answers = Collections.synchronizedList(new ArrayList<>());
    private final ShopWork work;
    private final List<Wish> wishes;
    private final Effort each;
    private volatile boolean done;
    private volatile @Nullable Future<?> running;

    WishSearch(ShopWork work, List<Wish> wishes, Effort each) {
        this.work = work;
        this.wishes = List.copyOf(wishes);
        this.each = each;
    }

    void run() {
        PlanAnswer asIs = BenchPlans.better(BenchBuilder.of(work), KeptPlan.NONE, each);
        if (asIs instanceof PlanAnswer.Planned planned) {
            for (Wish wish : wishes) {
                PlanAnswer then = BenchPlans.better(wish.bench(), KeptPlan.NONE, each);
                answers.add(WishAnswer.of(wish, planned.plan(), then, work.calendar()));
            }
        }
        done = true;
    }

    void searchedBy(Future<?> future) {
        running = future;
    }

    void stop() {
        Future<?> now = running;
        if (now != null) {
            now.cancel(true);
        }
        done = true;
    }

    boolean working() {
        return !done;
    }

    int wished() {
        return wishes.size();
    }

    List<WishAnswer> answers() {
        return List.copyOf(answers);
    }
}
