package afterlength.workshop.handover;

import afterlength.workshop.ledger.Ledger;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Keeps handovers. Rows are only added; the latest one of a visit holds. */
public final class HandoverStore {
    private final Ledger ledger;

    public HandoverStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Optional<Handover> findNow(long visitId) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM handover_now WHERE visit_id = :visit ORDER BY id DESC LIMIT 1")
                .bind("visit", visitId)
                .mapTo(Handover.class)
                .findOne());
    }

    /** Handovers that promise a check on this day or later, the nearest first; of each visit the latest. */
    public List<Handover> listChecks(LocalDate from) {
        return ledger.read(handle ->
                handle.createQuery("""
                        SELECT * FROM handover h WHERE h.next_check_on >= :from
                          AND NOT EXISTS (SELECT 1 FROM handover later WHERE later.visit_id = h.visit_id AND later.id > h.id)
                        ORDER BY h.next_check_on, h.id
                        """).bind("from", from).mapTo(Handover.class).list());
    }

    /** Whether the visit before this one, of the same instrument, ended with a handover. */
    public boolean wentHomeBefore(long visitId) {
        return ledger.read(handle -> handle.createQuery("""
                                SELECT count(*) FROM handover h WHERE h.visit_id = (SELECT max(v.id) FROM visit v
                                  JOIN visit this ON this.instrument_id = v.instrument_id WHERE this.id = :visit AND v.id < this.id)
                                """)
                        .bind("visit", visitId)
                        .mapTo(Integer.class)
                        .one())
                > 0;
    }

    public void save(Handover handover) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO handover (visit_id, replaces, handed_over_on, received_by, left_as_it_was, care,
                          returned_parts, next_check_on, written_at, hand)
                        VALUES (:visitId, (SELECT max(id) FROM handover_now WHERE visit_id = :visitId), :handedOverOn,
                          :receivedBy, :leftAsItWas, :care, :returnedParts, :nextCheckOn, :writtenAt, :hand)
                        """).bindMethods(handover).execute());
    }
}
