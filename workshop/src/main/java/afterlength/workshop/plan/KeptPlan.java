package afterlength.workshop.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A plan that was taken.
 *
 * @param because what it was made for
 * @param hand who took it
 * @param ready for each visit when it was to be ready
 */
public record KeptPlan(
        long id, String because, String hand, Instant writtenAt, List<PlacedPiece> pieces, List<PlannedVisit> ready) {
    static final KeptPlan NONE = new KeptPlan(0, "", "", Instant.EPOCH, List.of(), List.of());

    public KeptPlan {
        pieces = List.copyOf(pieces);
        ready = List.copyOf(ready);
    }

    boolean isNone() {
        return id == 0;
    }

    Optional<PlacedPiece> find(Piece piece) {
        return pieces.stream()
                .filter(place -> place.stepId() == piece.step().id() && place.part() == piece.part())
                .findFirst();
    }

    Optional<PlannedVisit> findVisit(long visitId) {
        return ready.stream().filter(visit -> visit.visitId() == visitId).findFirst();
    }
}
