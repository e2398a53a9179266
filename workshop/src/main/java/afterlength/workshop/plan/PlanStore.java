package afterlength.workshop.plan;

import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps the plans that were taken; each new one replaces the one before, and all stay. */
public final class PlanStore {
    private final Ledger ledger;

    public PlanStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The plan that holds. */
    public Optional<KeptPlan> findNow() {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM bench_plan_now ORDER BY id DESC LIMIT 1")
                .mapTo(PlanRow.class)
                .findOne()
                .map(row -> whole(handle, row)));
    }

    /** A row of the plan itself. */
    public record PlanRow(long id, String because, String hand, Instant writtenAt) {}

    /** Takes a plan, and gives the owners' promises the days that stand in it: both or neither. */
    KeptPlan take(String because, String hand, Instant now, List<PlacedPiece> pieces, List<PlannedVisit> visits) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO bench_plan (replaces, because, hand, written_at)
                            VALUES ((SELECT max(id) FROM bench_plan), :because, :hand, :now)
                            """)
                    .bind("because", because)
                    .bind("hand", hand)
                    .bind("now", now.truncatedTo(ChronoUnit.SECONDS))
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            pieces.forEach(piece -> put(handle, id, piece));
            visits.forEach(visit -> put(handle, id, visit));
            return whole(handle, row(handle, id));
        });
    }

    private static void put(Handle handle, long plan, PlacedPiece piece) {
        handle.createUpdate("""
                        INSERT INTO bench_plan_piece (plan_id, step_id, part, start, hands_end, end, hand)
                        VALUES (:plan, :stepId, :part, :start, :handsEnd, :end, :hand)
                        """).bindMethods(piece).bind("plan", plan).execute();
    }

    private static void put(Handle handle, long plan, PlannedVisit visit) {
        handle.createUpdate("""
                        INSERT INTO bench_plan_visit (plan_id, visit_id, ready_at, promised_before, promised_on)
                        VALUES (:plan, :visitId, :readyAt, :promisedBefore, :promisedOn)
                        """).bindMethods(visit).bind("plan", plan).execute();
        if (visit.promisedOn() != null && !Objects.equals(visit.promisedOn(), visit.promisedBefore())) {
            VisitStore.promise(handle, visit.visitId(), visit.promisedOn());
        }
    }

    private static PlanRow row(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM bench_plan WHERE id = :id")
                .bind("id", id)
                .mapTo(PlanRow.class)
                .one();
    }

    private static KeptPlan whole(Handle handle, PlanRow row) {
        return new KeptPlan(
                row.id(),
                row.because(),
                row.hand(),
                row.writtenAt(),
                handle.createQuery("SELECT * FROM bench_plan_piece WHERE plan_id = :id ORDER BY start, step_id, part")
                        .bind("id", row.id())
                        .mapTo(PlacedPiece.class)
                        .list(),
                handle.createQuery("SELECT * FROM bench_plan_visit WHERE plan_id = :id ORDER BY visit_id")
                        .bind("id", row.id())
                        .mapTo(PlannedVisit.class)
                        .list());
    }
}
