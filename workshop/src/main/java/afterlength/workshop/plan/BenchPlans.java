package afterlength.workshop.plan;

import afterlength.planner.bench.Plan;
import afterlength.planner.engine.Effort;
import afterlength.planner.engine.Planner;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * The plan of the bench. What was taken is an order of work; what is shown is that order laid out anew for this moment, with what was
 * truly done in its true place and with what is new since behind it. That takes milliseconds, so it is done whenever somebody looks.
 */
public final class BenchPlans {
    /** A person waits for no more than this while a better plan is looked for. */
    private static final double SEARCH_S = 1.5;

    /** For a wish, of which several are planned one behind the other: some tens of thousands of plans in a small shop. */
    private static final double WISH_SHARE = 1 / 3.0;

    private final PlanStore plans;
    private final ShopBooks books;
    private final Clock clock;
    private final double search_s;

    public BenchPlans(Ledger ledger, SettingsStore settings, Clock clock) {
        this(ledger, settings, clock, SEARCH_S);
    }

    /** The same for whoever waits less long than a person does. */
    public BenchPlans(Ledger ledger, SettingsStore settings, Clock clock, double search_s) {
        this.plans = new PlanStore(ledger);
        this.books = new ShopBooks(ledger, settings);
        this.clock = clock;
        this.search_s = search_s;
    }

    /** How long a better plan is looked for while somebody waits. */
    Effort effort() {
        return Effort.ofSeconds(search_s);
    }

    /** How long for each wish. */
    Effort effortForWish() {
        return Effort.ofSeconds(search_s * WISH_SHARE);
    }

    Clock clock() {
        return clock;
    }

    KeptPlan kept() {
        return plans.findNow().orElse(KeptPlan.NONE);
    }

    ShopWork work() {
        return books.at(clock.instant());
    }

    /** The plan as it stands at this moment. */
    PlanAnswer now() {
        return retimed(BenchBuilder.of(work()), kept());
    }

    /** The kept order, laid out at once. */
    static PlanAnswer retimed(Bench bench, KeptPlan kept) {
        Plan from = bench.goOnFrom(kept);
        return CheckedPlan.of(bench, from, Planner.retime(bench.workshop(), from));
    }

    /** A plan that is better than the kept order and changes as little as it is worth. */
    static PlanAnswer better(Bench bench, KeptPlan kept, Effort effort) {
        Plan from = bench.goOnFrom(kept);
        return CheckedPlan.of(bench, from, Planner.replan(bench.workshop(), from, Planner.STABILITY, effort));
    }

    /** Takes a plan; these visits get new promises. */
    KeptPlan take(CheckedPlan plan, String because, String hand, List<PlannedVisit> visits) {
        return plans.take(because, hand, clock.instant(), plan.bench().placed(plan.plan()), visits);
    }

    /** Takes a plan; promises stay as they are. */
    KeptPlan take(CheckedPlan plan, String because, String hand) {
        return take(plan, because, hand, unchanged(plan));
    }

    /**
     * Plans and takes the plan, without asking anybody; promises stay as they are. Empty when nothing could be planned.
     *
     * @param layings how many plans are laid out on the way; counted so, the outcome is the same on every machine
     */
    public Optional<KeptPlan> planAndTake(String because, String hand, long layings) {
        Bench bench = BenchBuilder.of(work());
        return better(bench, kept(), Effort.ofLayings(layings)) instanceof PlanAnswer.Planned planned
                ? Optional.of(take(planned.plan(), because, hand))
                : Optional.empty();
    }

    private static List<PlannedVisit> unchanged(CheckedPlan plan) {
        return plan.bench().visits().stream()
                .map(visit -> new PlannedVisit(
                        visit.visitId(),
                        plan.findReady(visit.visitId()).orElse(Instant.EPOCH),
                        visit.promisedOn(),
                        visit.promisedOn()))
                .toList();
    }
}
