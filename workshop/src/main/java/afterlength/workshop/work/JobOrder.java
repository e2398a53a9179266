package afterlength.workshop.work;

import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentTemplate;
import afterlength.workshop.agreement.TreatmentTemplates;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Accepted treatments in the order in which a job goes, which is the order of the templates: structure before edges, edges before colour,
 * set-up last. A treatment in own words keeps its place behind the one before it in the proposal.
 */
final class JobOrder {
    private final List<Treatment> treatments;
    private final Map<Long, Integer> ranks;

    private JobOrder(List<Treatment> accepted) {
        ranks = ranks(accepted);
        treatments = accepted.stream()
                .sorted(Comparator.comparing(treatment -> ranks.getOrDefault(treatment.id(), 0)))
                .toList();
    }

    static JobOrder of(List<Treatment> accepted) {
        return new JobOrder(accepted);
    }

    List<Treatment> treatments() {
        return treatments;
    }

    /** Whether a step belongs to a treatment that comes later in a job than this one. */
    boolean isAfter(Step step, Treatment treatment) {
        Integer rank = step.treatmentId() == null ? null : ranks.get(step.treatmentId());
        return rank != null && rank > ranks.getOrDefault(treatment.id(), 0);
    }

    private static Map<Long, Integer> ranks(List<Treatment> accepted) {
        List<String> keys =
                TreatmentTemplates.list().stream().map(TreatmentTemplate::key).toList();
        Map<Long, Integer> ranks = new HashMap<>();
        int before = 0;
        for (Treatment treatment : accepted) {
            int rank = keys.indexOf(treatment.template());
            before = rank < 0 ? before : rank;
            ranks.put(treatment.id(), before);
        }
        return ranks;
    }
}
