package afterlength.workshop.work;

import afterlength.workshop.agreement.AfterAgreement;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.PracticeStore;
import afterlength.workshop.agreement.PracticeTimes;
import afterlength.workshop.agreement.Treatment;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * Brings the steps of a visit in line with the treatments accepted now, in the transaction that keeps the agreement. A treatment that is
 * new gets its steps where the order of the job puts them, before anything later that nobody has begun; of one no longer accepted the steps
 * that nobody has begun are left out, and come back when it is accepted again. What hands have begun is never touched.
 */
public final class AgreedSteps implements AfterAgreement {

    @Override
    public void agreed(Handle handle, Agreement agreement, List<Treatment> accepted) {
        long visit = agreement.visitId();
        JobOrder order = JobOrder.of(accepted);
        leaveOut(handle, visit, accepted);
        for (Treatment treatment : order.treatments()) {
            List<Step> known = StepStore.list(handle, visit).stream()
                    .filter(step -> step.isOf(treatment.id()))
                    .toList();
            if (known.isEmpty()) {
                add(handle, visit, treatment, order);
            } else {
                takeBack(handle, known);
            }
        }
    }

    /** The steps that would come of these treatments, in the order of the job; their ids are those of no kept step. */
    public static List<Step> preview(long visitId, List<Treatment> accepted, PracticeTimes practice) {
        List<Step> steps = new ArrayList<>();
        for (Treatment treatment : JobOrder.of(accepted).treatments()) {
            for (PlannedStep step : PlannedStep.listFor(treatment, practice)) {
                int position = steps.size() + 1;
                steps.add(step.at(-position, visitId, treatment.id(), position));
            }
        }
        return steps;
    }

    private static void leaveOut(Handle handle, long visit, List<Treatment> accepted) {
        Set<Long> wanted = accepted.stream().map(Treatment::id).collect(Collectors.toSet());
        Set<Long> begun = StepStore.listBegun(handle, visit);
        StepStore.list(handle, visit).stream()
                .filter(step -> step.treatmentId() != null && !wanted.contains(step.treatmentId()))
                .filter(step -> !step.dropped() && !begun.contains(step.id()))
                .forEach(step -> StepStore.stand(handle, step.id(), Step.Standing.DROPPED_BY_AGREEMENT));
    }

    private static void takeBack(Handle handle, List<Step> known) {
        known.stream()
                .filter(step -> step.standing() == Step.Standing.DROPPED_BY_AGREEMENT)
                .forEach(step -> StepStore.stand(handle, step.id(), Step.Standing.IN_ORDER));
    }

    private static void add(Handle handle, long visit, Treatment treatment, JobOrder order) {
        Set<Long> begun = StepStore.listBegun(handle, visit);
        List<PlannedStep> steps = PlannedStep.listFor(treatment, PracticeStore.of(handle));
        StepStore.list(handle, visit).stream()
                .filter(step -> !step.dropped() && !begun.contains(step.id()) && order.isAfter(step, treatment))
                .findFirst()
                .ifPresentOrElse(
                        later -> StepStore.addBefore(handle, later, treatment.id(), steps),
                        () -> steps.forEach(step -> StepStore.add(handle, visit, treatment.id(), step)));
    }
}
