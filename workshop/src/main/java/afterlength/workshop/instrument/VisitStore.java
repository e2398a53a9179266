package afterlength.workshop.instrument;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps visits, numbered through the year in the order of arrival. */
public final class VisitStore {
    private final Ledger ledger;

    public VisitStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Visit get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM visit WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Visit.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("visit", id));
    }

    /** All visits of an instrument, the latest first. */
    public List<Visit> listOf(long instrumentId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM visit WHERE instrument_id = :id ORDER BY id DESC")
                        .bind("id", instrumentId)
                        .mapTo(Visit.class)
                        .list());
    }

    /** Visits that have not been handed over, in the order of what was promised, then of arrival. */
    public List<Visit> listInHouse() {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT v.* FROM visit v WHERE NOT EXISTS (SELECT 1 FROM handover h WHERE h.visit_id = v.id)
                        ORDER BY v.promised_on IS NULL, v.promised_on, v.received_on, v.id
                        """).mapTo(Visit.class).list());
    }

    /** A person brings an instrument for the first time: owner, instrument and visit are kept together or not at all. */
    public Visit receive(Arrival arrival) {
        return ledger.write(handle -> {
            Owner owner = arrival.owner();
            long ownerId = owner.id() > 0 ? owner.id() : OwnerStore.add(handle, owner);
            long instrumentId = InstrumentStore.add(handle, arrival.instrumentOf(ownerId));
            return add(handle, arrival.visitOf(instrumentId));
        });
    }

    /** An instrument that is known comes again. */
    public Visit receiveAgain(Visit visit) {
        return ledger.write(handle -> add(handle, visit));
    }

    /** Answers false, and changes nothing, when somebody else has changed the visit meanwhile. */
    public boolean change(Visit visit) {
        return ledger.write(
                handle -> handle.createUpdate("""
                                UPDATE visit SET received_on = :receivedOn, brought_by = :broughtBy, reason = :reason,
                                  wish = :wish, accessories = :accessories, condition_words = :conditionWords,
                                  insured_value_minor = :insuredValueMinor, promised_on = :promisedOn, version = version + 1
                                WHERE id = :id AND version = :version
                                """).bindMethods(visit).execute() == 1);
    }

    public void promise(long visitId, LocalDate readyBy) {
        ledger.change(handle -> promise(handle, visitId, readyBy));
    }

    /** Within a transaction of a later stage. */
    public static void promise(Handle handle, long visitId, LocalDate readyBy) {
        handle.createUpdate("UPDATE visit SET promised_on = :on, version = version + 1 WHERE id = :id")
                .bind("on", readyBy)
                .bind("id", visitId)
                .execute();
    }

    private static Visit add(Handle handle, Visit visit) {
        long id = handle.createUpdate("""
                        INSERT INTO visit (instrument_id, number, received_on, brought_by, reason, wish, accessories,
                          condition_words, insured_value_minor, promised_on)
                        VALUES (:instrumentId, :freshNumber, :receivedOn, :broughtBy, :reason, :wish, :accessories,
                          :conditionWords, :insuredValueMinor, :promisedOn)
                        """)
                .bindMethods(visit)
                .bind("freshNumber", nextNumber(handle, visit.receivedOn().getYear()))
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return handle.createQuery("SELECT * FROM visit WHERE id = :id")
                .bind("id", id)
                .mapTo(Visit.class)
                .one();
    }

    private static String nextNumber(Handle handle, int year) {
        int last = handle.createQuery(
                        "SELECT coalesce(max(CAST(substr(number, 6) AS INTEGER)), 0) FROM visit WHERE number LIKE :year")
                .bind("year", year + "-%")
                .mapTo(Integer.class)
                .one();
        return "%04d-%03d".formatted(year, last + 1);
    }
}
