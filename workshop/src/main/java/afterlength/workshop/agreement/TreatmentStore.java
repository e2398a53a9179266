package afterlength.workshop.agreement;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps the lines of proposals, and which findings they answer. */
public final class TreatmentStore {
    private final Ledger ledger;

    public TreatmentStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The shop's own times, that a new line begins with. */
    PracticeTimes practice() {
        return ledger.read(PracticeStore::of);
    }

    public Treatment get(long id) {
        return ledger.read(handle -> find(handle, id)).orElseThrow(() -> new NotHere("treatment", id));
    }

    /** The lines of a visit's proposal in their order, without what was put away. */
    public List<Treatment> listOf(long visitId) {
        return ledger.read(handle -> list(handle, visitId, false));
    }

    public List<Treatment> listPutAway(long visitId) {
        return ledger.read(handle -> list(handle, visitId, true));
    }

    static List<Treatment> list(Handle handle, long visitId, boolean putAway) {
        return handle.createQuery(
                        "SELECT * FROM treatment WHERE visit_id = :visit AND put_away = :away ORDER BY position, id")
                .bind("visit", visitId)
                .bind("away", putAway)
                .mapTo(Treatment.class)
                .list();
    }

    /** Which line answers which finding. A finding that was corrected is followed to its latest form; withdrawn ones fall out. */
    public List<AnsweredFinding> listAnswers(long visitId) {
        return ledger.read(handle -> handle.createQuery("""
                        WITH RECURSIVE form (first, now) AS (
                          SELECT id, id FROM finding WHERE visit_id = :visit
                          UNION ALL
                          SELECT form.first, later.id FROM form JOIN finding later ON later.replaces = form.now
                        )
                        SELECT DISTINCT answer.treatment_id, finding_now.id AS finding_id
                        FROM treatment_finding answer
                        JOIN form ON form.first = answer.finding_id
                        JOIN finding_now ON finding_now.id = form.now
                        WHERE answer.treatment_id IN (SELECT id FROM treatment WHERE visit_id = :visit)
                        ORDER BY finding_now.id, answer.treatment_id
                        """)
                .bind("visit", visitId)
                .mapTo(AnsweredFinding.class)
                .list());
    }

    /** Adds a line at the end of the proposal. */
    public Treatment add(Treatment treatment, Collection<Long> findingIds) {
        return ledger.write(handle -> {
            long id = insert(handle, treatment);
            join(handle, id, findingIds);
            return find(handle, id).orElseThrow();
        });
    }

    /** Answers false, and changes nothing, when somebody else has changed the line meanwhile. */
    public boolean change(Treatment treatment, Collection<Long> findingIds) {
        return ledger.write(handle -> {
            boolean changed = update(handle, treatment);
            if (changed) {
                handle.createUpdate("DELETE FROM treatment_finding WHERE treatment_id = :id")
                        .bind("id", treatment.id())
                        .execute();
                join(handle, treatment.id(), findingIds);
            }
            return changed;
        });
    }

    /** Takes a line out of the proposal, or brings it back; what was agreed before keeps naming it. */
    public void putAway(long id, boolean away) {
        ledger.change(handle -> handle.createUpdate(
                        "UPDATE treatment SET put_away = :away, version = version + 1 WHERE id = :id")
                .bind("away", away)
                .bind("id", id)
                .execute());
    }

    public void moveEarlier(long id) {
        ledger.change(handle -> changePlaces(handle, id, """
                SELECT other.* FROM treatment other JOIN treatment it ON it.visit_id = other.visit_id
                WHERE it.id = :id AND other.put_away = 0 AND other.position < it.position ORDER BY other.position DESC LIMIT 1
                """));
    }

    public void moveLater(long id) {
        ledger.change(handle -> changePlaces(handle, id, """
                SELECT other.* FROM treatment other JOIN treatment it ON it.visit_id = other.visit_id
                WHERE it.id = :id AND other.put_away = 0 AND other.position > it.position ORDER BY other.position LIMIT 1
                """));
    }

    private static void changePlaces(Handle handle, long id, String neighbour) {
        Treatment moved = find(handle, id).orElseThrow(() -> new NotHere("treatment", id));
        handle.createQuery(neighbour)
                .bind("id", id)
                .mapTo(Treatment.class)
                .findOne()
                .ifPresent(other -> {
                    place(handle, moved.id(), other.position());
                    place(handle, other.id(), moved.position());
                });
    }

    private static void place(Handle handle, long id, int position) {
        handle.createUpdate("UPDATE treatment SET position = :position WHERE id = :id")
                .bind("position", position)
                .bind("id", id)
                .execute();
    }

    private static Optional<Treatment> find(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM treatment WHERE id = :id")
                .bind("id", id)
                .mapTo(Treatment.class)
                .findOne();
    }

    private static long insert(Handle handle, Treatment treatment) {
        return handle.createUpdate("""
                        INSERT INTO treatment (visit_id, position, tier, title, reason, if_left, undoing, reversibility,
                          materials, template, minutes_low, minutes_high, material_minor)
                        VALUES (:visitId, (SELECT coalesce(max(position), 0) + 1 FROM treatment WHERE visit_id = :visitId),
                          :tier, :title, :reason, :ifLeft, :undoing, :reversibility,
                          :materials, :template, :minutesLow, :minutesHigh, :materialMinor)
                        """)
                .bindMethods(treatment)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    private static boolean update(Handle handle, Treatment treatment) {
        return handle.createUpdate("""
                        UPDATE treatment SET tier = :tier, title = :title, reason = :reason, if_left = :ifLeft,
                          undoing = :undoing, reversibility = :reversibility, materials = :materials,
                          minutes_low = :minutesLow, minutes_high = :minutesHigh, material_minor = :materialMinor,
                          version = version + 1
                        WHERE id = :id AND version = :version
                        """).bindMethods(treatment).execute() == 1;
    }

    private static void join(Handle handle, long id, Collection<Long> findingIds) {
        for (long finding : findingIds) {
            handle.createUpdate(
                            "INSERT OR IGNORE INTO treatment_finding (treatment_id, finding_id) VALUES (:id, :finding)")
                    .bind("id", id)
                    .bind("finding", finding)
                    .execute();
        }
    }
}
