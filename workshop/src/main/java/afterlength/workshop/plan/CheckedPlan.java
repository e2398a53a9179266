package afterlength.workshop.plan;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Job;
import afterlength.planner.bench.Plan;
import afterlength.planner.check.BrokenRule;
import afterlength.planner.check.PlanCheck;
import afterlength.planner.check.PlanCost;
import afterlength.workshop.work.HouseVisit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A plan that has passed the checker. There is no other way to one. */
final class CheckedPlan {
    private final Bench bench;
    private final Plan plan;
    private final List<PlannedLine> lines;

    private CheckedPlan(Bench bench, Plan plan) {
        this.bench = bench;
        this.plan = plan;
        List<PlacedPiece> places = bench.placed(plan);
        this.lines = bench.workshop().steps().stream()
                .map(step -> new PlannedLine(
                        step.id(), bench.visitOf(step), bench.pieces().get(step.id()), places.get(step.id())))
                .sorted(Comparator.comparing((PlannedLine line) -> line.place().start())
                        .thenComparing(PlannedLine::id))
                .toList();
    }

    static PlanAnswer of(Bench bench, Plan goneOnFrom, Optional<Plan> plan) {
        if (plan.isEmpty()) {
            return new PlanAnswer.NoRoom();
        }
        List<BrokenRule> broken = PlanCheck.of(bench.workshop(), plan.get(), Optional.of(goneOnFrom));
        return broken.isEmpty()
                ? new PlanAnswer.Planned(new CheckedPlan(bench, plan.get()))
                : new PlanAnswer.Broken(bench, broken);
    }

    Bench bench() {
        return bench;
    }

    Plan plan() {
        return plan;
    }

    /** Every piece with its place, in the order of time. */
    List<PlannedLine> lines() {
        return lines;
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    double cost() {
        return PlanCost.of(bench.workshop(), plan);
    }

    /** When everything on this visit is done and dry; empty when it has no open step. */
    Optional<Instant> findReady(long visitId) {
        return bench.workshop().jobs().stream()
                .filter(job -> bench.visits().get(job.id()).visitId() == visitId)
                .findFirst()
                .map(this::ready);
    }

    Instant ready(Job job) {
        return bench.time().at(PlanCost.ready(bench.workshop(), plan, job));
    }

    boolean isLate(HouseVisit visit, BenchCalendar calendar) {
        LocalDate promised = visit.promisedOn();
        return promised != null
                && findReady(visit.visitId())
                        .map(ready -> ready.isAfter(calendar.closingAt(promised)))
                        .orElse(false);
    }

    /** The first hands of a step. */
    Optional<PlannedLine> findStep(long stepId) {
        return lines.stream().filter(line -> line.piece().step().id() == stepId).findFirst();
    }

    BenchStep benchStep(PlannedLine line) {
        return bench.workshop().steps().get(line.id());
    }
}
