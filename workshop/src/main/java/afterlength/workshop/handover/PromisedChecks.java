package afterlength.workshop.handover;

import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.work.ComingCheck;
import afterlength.workshop.work.ComingChecks;
import java.time.LocalDate;
import java.util.List;

/**
 * Checks promised at a handover, for Today. One is told from thirty days before its day, time enough to write to the owner, until ninety
 * days after it, when nobody waits for it any more (both common practice), unless the instrument came again.
 */
public final class PromisedChecks implements ComingChecks {
    private static final int DAYS_BEFORE = 30;
    static final int DAYS_AFTER = 90;

    private final Ledger ledger;

    public PromisedChecks(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public List<ComingCheck> list(LocalDate today) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT i.id AS instrument_id, i.name AS instrument, v.number AS visit, h.handed_over_on,
                          h.next_check_on AS check_on
                        FROM handover h JOIN visit v ON v.id = h.visit_id JOIN instrument i ON i.id = v.instrument_id
                        WHERE h.next_check_on BETWEEN :from AND :to
                          AND NOT EXISTS (SELECT 1 FROM handover later WHERE later.visit_id = h.visit_id AND later.id > h.id)
                          AND NOT EXISTS (SELECT 1 FROM visit again WHERE again.instrument_id = v.instrument_id AND again.id > v.id)
                        ORDER BY h.next_check_on, h.id
                        """)
                .bind("from", today.minusDays(DAYS_AFTER))
                .bind("to", today.plusDays(DAYS_BEFORE))
                .mapTo(ComingCheck.class)
                .list());
    }
}
