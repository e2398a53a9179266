package afterlength.workshop.work;

import afterlength.workshop.ledger.Ledger;
import java.util.List;

/** Asks the whole house at once what is in it and how far each stage has come. */
public final class HouseStore {
    private final Ledger ledger;

    public HouseStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** In the order of what was promised, then of arrival. */
    public List<HouseVisit> list() {
        return ledger.read(
                handle -> handle.createQuery("""
                        SELECT v.id AS visit_id, v.instrument_id, i.name AS instrument, v.number, v.received_on, v.promised_on,
                          (SELECT count(*) FROM finding_now f WHERE f.visit_id = v.id)
                            + (SELECT count(*) FROM measure_now m WHERE m.visit_id = v.id) AS looked,
                          (SELECT count(*) FROM treatment t WHERE t.visit_id = v.id AND t.put_away = 0) AS treatments,
                          (SELECT count(*) FROM agreement_now a WHERE a.visit_id = v.id) AS agreements
                        FROM visit v JOIN instrument i ON i.id = v.instrument_id
                        WHERE NOT EXISTS (SELECT 1 FROM handover h WHERE h.visit_id = v.id)
                        ORDER BY v.promised_on IS NULL, v.promised_on, v.received_on, v.id
                        """).mapTo(HouseVisit.class).list());
    }
}
