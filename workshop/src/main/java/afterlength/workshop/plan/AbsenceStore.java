package afterlength.workshop.plan;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps who is away when; an absence is taken back by a row that replaces it. */
public final class AbsenceStore {
    private final Ledger ledger;

    public AbsenceStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Absence get(long id) {
        return ledger.read(handle -> get(handle, id));
    }

    /** Absences that are not over on this day. */
    public List<Absence> listFrom(LocalDate day) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM absence_now WHERE to_day >= :day ORDER BY from_day, away, id")
                .bind("day", day)
                .mapTo(Absence.class)
                .list());
    }

    public Absence add(Absence absence) {
        return ledger.write(handle -> add(handle, absence));
    }

    /** Takes an absence back; answers false when that was done already. */
    public boolean withdraw(long id, String hand, Instant now) {
        return ledger.write(handle -> {
            Absence was = get(handle, id);
            boolean stands = handle.createQuery("SELECT count(*) FROM absence_now WHERE id = :id")
                            .bind("id", id)
                            .mapTo(Integer.class)
                            .one()
                    == 1;
            if (stands) {
                add(handle, new Absence(0, id, true, was.away(), was.fromDay(), was.toDay(), was.reason(), hand, now));
            }
            return stands;
        });
    }

    private static Absence add(Handle handle, Absence absence) {
        long id = handle.createUpdate("""
                        INSERT INTO absence (replaces, withdrawn, away, from_day, to_day, reason, hand, written_at)
                        VALUES (:replaces, :withdrawn, :away, :fromDay, :toDay, :reason, :hand, :now)
                        """)
                .bindMethods(absence)
                .bind("now", absence.writtenAt().truncatedTo(ChronoUnit.SECONDS))
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return get(handle, id);
    }

    private static Absence get(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM absence WHERE id = :id")
                .bind("id", id)
                .mapTo(Absence.class)
                .findOne()
                .orElseThrow(() -> new NotHere("absence", id));
    }
}
