package afterlength.workshop.advice;

import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.Optional;

/** Keeps decisions. Rows are only ever added; the latest about a finding holds, through all wordings of the finding. */
public final class DecisionStore {
    private final Ledger ledger;

    public DecisionStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** All decisions about a finding, whichever wording of it they named, the latest first. */
    public List<Decision> listOf(long findingId) {
        return ledger.read(handle -> handle.createQuery("""
                        WITH RECURSIVE
                          earlier (id) AS (
                            SELECT :finding UNION SELECT f.replaces FROM finding f JOIN earlier e ON f.id = e.id
                            WHERE f.replaces IS NOT NULL),
                          wording (id) AS (
                            SELECT id FROM earlier UNION SELECT f.id FROM finding f JOIN wording w ON f.replaces = w.id)
                        SELECT * FROM advice_decision WHERE finding_id IN (SELECT id FROM wording) ORDER BY id DESC
                        """)
                .bind("finding", findingId)
                .mapTo(Decision.class)
                .list());
    }

    public Optional<Decision> findNow(long findingId) {
        return listOf(findingId).stream().findFirst();
    }

    /** Writes a decision over the one that holds; the ids it carries are not looked at. */
    public long decide(Decision decision) {
        Long before = findNow(decision.findingId()).map(Decision::id).orElse(null);
        return ledger.write(handle -> handle.createUpdate("""
                        INSERT INTO advice_decision (visit_id, finding_id, replaces, treatment, title, reason, hand, written_at)
                        VALUES (:visitId, :findingId, :before, :treatment, :title, :reason, :hand, :writtenAt)
                        """)
                .bindMethods(decision)
                .bind("before", before)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one());
    }
}
