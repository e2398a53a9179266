package afterlength.workshop.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;

/** The plans people are looking at; one is searched for at a time, and only the latest few are remembered. */
final class Drafts {
    private static final int REMEMBERED = 20;

    private final BenchPlans plans;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(Drafts::behind);
    private final AtomicLong count = new AtomicLong();
    private final Map<String, Draft> byId = new LinkedHashMap<>();

    Drafts(BenchPlans plans) {
        this.plans = plans;
    }

    /** A plan being looked for keeps nobody from leaving the program. */
    private static Thread behind(Runnable work) {
        Thread thread = new Thread(work, "plan search");
        thread.setDaemon(true);
        return thread;
    }

    /** Moves the old order along, and begins to look for a better plan. */
    Draft begin(String because) {
        ShopWork work = plans.work();
        KeptPlan kept = plans.kept();
        Bench bench = BenchBuilder.of(work);
        String id = Long.toString(work.now().getEpochSecond(), 36) + "-" + count.incrementAndGet();
        Draft draft = new Draft(id, because, work, kept, BenchPlans.retimed(bench, kept));
        draft.searchedBy(worker.submit(() -> draft.end(BenchPlans.better(bench, kept, plans.effort()))));
        remember(draft);
        return draft;
    }

    private synchronized void remember(Draft draft) {
        byId.put(draft.id(), draft);
        if (byId.size() > REMEMBERED) {
            byId.remove(byId.keySet().iterator().next());
        }
    }

    synchronized Optional<Draft> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
