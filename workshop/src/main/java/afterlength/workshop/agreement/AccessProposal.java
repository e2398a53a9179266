package afterlength.workshop.agreement;

import java.util.List;
import java.util.Optional;

/**
 * The lines of a proposal that a study leads to: treatments of ours, with what was found about the way. A line that is already there for
 * the crack is not offered a second time; what was found is written into it when it does not say so yet.
 */
final class AccessProposal {
    private final TreatmentStore treatments;
    private final AccessLook look;
    private final long visitId;
    private final long findingId;

    private AccessProposal(TreatmentStore treatments, AccessLook look, long visitId, long findingId) {
        this.treatments = treatments;
        this.look = look;
        this.visitId = visitId;
        this.findingId = findingId;
    }

    /** Nothing happens while nothing is decided. */
    static void record(TreatmentStore treatments, AccessLook look, long visitId, long findingId) {
        AccessProposal proposal = new AccessProposal(treatments, look, visitId, findingId);
        look.study().chosen().work().forEach(proposal::record);
    }

    private void record(TreatmentTemplate template) {
        Optional<Treatment> there = find(template);
        if (there.isEmpty()) {
            treatments.add(with(Treatment.from(template, visitId), found(template)), List.of(findingId));
        } else if (!there.get().reason().contains(found(template))) {
            treatments.change(with(there.get(), found(template)), answeredBy(there.get()));
        }
    }

    private Optional<Treatment> find(TreatmentTemplate template) {
        return treatments.listOf(visitId).stream()
                .filter(line -> template.key().equals(line.template()))
                .filter(line -> answeredBy(line).contains(findingId))
                .findFirst();
    }

    private List<Long> answeredBy(Treatment line) {
        return treatments.listAnswers(visitId).stream()
                .filter(answer -> answer.treatmentId() == line.id())
                .map(AnsweredFinding::findingId)
                .toList();
    }

    private String found(TreatmentTemplate template) {
        return template.key().equals(AccessChoice.LAID_IN)
                ? AccessWords.row(look.row()) + " " + AccessWords.passage(look.passage())
                : "";
    }

    private static Treatment with(Treatment line, String found) {
        return new Treatment(
                line.id(),
                line.visitId(),
                line.position(),
                line.tier(),
                line.title(),
                (line.reason() + " " + found).strip(),
                line.ifLeft(),
                line.undoing(),
                line.reversibility(),
                line.materials(),
                line.template(),
                line.minutesLow(),
                line.minutesHigh(),
                line.materialMinor(),
                line.putAway(),
                line.version());
    }
}
