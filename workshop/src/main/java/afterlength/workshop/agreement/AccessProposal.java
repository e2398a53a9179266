package afterlength.workshop.agreement;

import java.util.Optional;

/** The line of a proposal that a study leads to: a treatment of ours, with what was found about the way. */
final class AccessProposal {
    private AccessProposal() {}

    /** None while nothing is decided. */
    static Optional<Treatment> find(AccessLook look, long visitId) {
        String template = switch (look.study().chosen()) {
            case UNDECIDED -> "";
            case CLEATS -> "studs-through-sound-hole";
            case NO_CLEATS -> "crack-outside";
            case OPEN_TOP -> "crack-top-off";
        };
        return TreatmentTemplates.find(template).map(found -> withReason(Treatment.from(found, visitId), look));
    }

    private static Treatment withReason(Treatment line, AccessLook look) {
        String cleats = look.study().chosen() == AccessChoice.CLEATS
                ? " " + AccessWords.row(look.row()) + " " + AccessWords.passage(look.passage())
                : "";
        return new Treatment(
                line.id(),
                line.visitId(),
                line.position(),
                line.tier(),
                line.title(),
                line.reason() + cleats,
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
