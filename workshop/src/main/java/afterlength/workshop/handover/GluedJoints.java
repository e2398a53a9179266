package afterlength.workshop.handover;

import java.util.List;

/** The joints glued during a visit; whoever keeps the glue pot answers, and {@code start} wires it. */
public interface GluedJoints {
    /** A shop that keeps no glue pot. */
    GluedJoints NONE = visitId -> List.of();

    /** In the order of gluing. */
    List<GluedJoint> of(long visitId);
}
