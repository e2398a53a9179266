package afterlength.workshop.plan;

import afterlength.workshop.agreement.PracticeStore;
import afterlength.workshop.agreement.PracticeTimes;
import afterlength.workshop.agreement.ReadyBy;
import afterlength.workshop.agreement.ReadySpan;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.work.AgreedSteps;
import afterlength.workshop.work.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * When a proposal would be ready if it were agreed today: its steps are laid behind everything that is planned, once with their low figures and
 * once with their high ones. What is agreed already keeps its usual times. Nothing is searched for, so it takes milliseconds; once agreed, a
 * better place may be found.
 */
public final class PlanReadyBy implements ReadyBy {
    private final BenchPlans plans;
    private final PracticeStore practice;

    public PlanReadyBy(BenchPlans plans, PracticeStore practice) {
        this.plans = plans;
        this.practice = practice;
    }

    @Override
    public List<Optional<ReadySpan>> of(Visit visit, List<List<Treatment>> ways) {
        ShopWork now = plans.work();
        KeptPlan kept = plans.kept();
        PracticeTimes times = practice.get();
        return ways.stream()
                .map(lines -> span(with(now, visit.id(), lines, times), kept, visit))
                .toList();
    }

    private static Optional<ReadySpan> span(ShopWork work, KeptPlan kept, Visit visit) {
        Optional<LocalDate> quick = ready(work, kept, visit.id(), Pace.QUICK);
        Optional<LocalDate> slow = ready(work, kept, visit.id(), Pace.SLOW);
        return quick.flatMap(
                one -> slow.map(other -> one.isAfter(other) ? new ReadySpan(other, one) : new ReadySpan(one, other)));
    }

    private static Optional<LocalDate> ready(ShopWork work, KeptPlan kept, long visit, Pace pace) {
        Bench bench = BenchBuilder.of(work, Map.of(visit, pace));
        return BenchPlans.retimed(bench, kept) instanceof PlanAnswer.Planned planned
                ? planned.plan().findReady(visit).map(work.calendar()::readyDay)
                : Optional.empty();
    }

    /** What nobody has begun on this visit gives way to the steps of the proposal. */
    private static ShopWork with(ShopWork work, long visit, List<Treatment> lines, PracticeTimes times) {
        Set<Long> begun = work.diary().stream()
                .map(entry -> entry.writing().stepId())
                .filter(id -> id != null)
                .collect(Collectors.toSet());
        List<Step> steps = new ArrayList<>(work.steps().stream()
                .filter(step -> step.visitId() != visit || begun.contains(step.id()))
                .toList());
        Set<Long> known = steps.stream()
                .filter(step -> step.visitId() == visit && step.treatmentId() != null)
                .map(Step::treatmentId)
                .collect(Collectors.toSet());
        AgreedSteps.preview(visit, lines, times).stream()
                .filter(step -> !known.contains(step.treatmentId()))
                .forEach(steps::add);
        return work.with(steps);
    }
}
