package afterlength.workshop.plan;

import afterlength.workshop.agreement.AfterAgreement;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Plans a scope behind the pages once it is agreed, and takes the plan without asking: nobody was promised anything by it. Where the better
 * plan would make another instrument late that is on time, the old order stays and the new steps come behind it; that needs no search.
 * Until the plan is taken, and if the program is stopped meanwhile, the pages show the new steps behind all others.
 */
public final class PlanAgreed implements AfterAgreement {
    private final Ledger ledger;
    private final BenchPlans plans;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(PlanAgreed::behind);
    private volatile boolean watching;
    private volatile @Nullable Future<?> running;

    public PlanAgreed(Ledger ledger, BenchPlans plans) {
        this.ledger = ledger;
        this.plans = plans;
    }

    private static Thread behind(Runnable work) {
        Thread thread = new Thread(work, "plan after agreement");
        thread.setDaemon(true);
        return thread;
    }

    /** From now on somebody looks at the pages. Whoever fills a shop without them plans it at the end. */
    public void watch() {
        watching = true;
    }

    @Override
    public void agreed(Handle handle, Agreement agreement, List<Treatment> accepted) {
        if (watching) {
            running = worker.submit(() -> plan(agreement));
        }
    }

    boolean isPlanning() {
        Future<?> now = running;
        return now != null && !now.isDone();
    }

    /** Nobody waits for it: the old order stays, with what was agreed behind it. */
    void stop() {
        Future<?> now = running;
        if (now != null) {
            now.cancel(true);
        }
    }

    private void plan(Agreement agreement) {
        waitForTheAgreement();
        ShopWork work = plans.work();
        KeptPlan kept = plans.kept();
        Bench bench = BenchBuilder.of(work);
        PlanAnswer moved = BenchPlans.retimed(bench, kept);
        PlanAnswer better = BenchPlans.better(bench, kept, plans.effort());
        if (!(better instanceof PlanAnswer.Planned found)) {
            return;
        }
        CheckedPlan chosen = moved instanceof PlanAnswer.Planned old && hurts(found.plan(), old.plan(), work)
                ? old.plan()
                : found.plan();
        plans.take(chosen, because(work, agreement), agreement.hand());
    }

    /** The agreement is written while this is asked for; whoever may write next finds it kept. */
    private void waitForTheAgreement() {
        ledger.change(handle -> handle.execute("SELECT 1"));
    }

    private static boolean hurts(CheckedPlan found, CheckedPlan old, ShopWork work) {
        BenchCalendar calendar = work.calendar();
        return found.bench().visits().stream()
                .anyMatch(visit -> found.isLate(visit, calendar) && !old.isLate(visit, calendar));
    }

    private static String because(ShopWork work, Agreement agreement) {
        return work.house().stream()
                .filter(visit -> visit.visitId() == agreement.visitId())
                .findFirst()
                .map(visit -> "agreed: " + visit.instrument())
                .orElse("agreed");
    }
}
