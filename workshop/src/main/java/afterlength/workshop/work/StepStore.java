package afterlength.workshop.work;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Keeps the steps of a visit in the order the restorer gives them. A dropped step stays and can be taken back. */
public final class StepStore {
    private final Ledger ledger;

    public StepStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Step get(long id) {
        return ledger.read(handle -> get(handle, id));
    }

    /** All steps of a visit in order, the dropped ones among them. */
    public List<Step> list(long visitId) {
        return ledger.read(handle -> list(handle, visitId));
    }

    /** The steps of all visits that have not been handed over. */
    List<Step> listInHouse() {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT * FROM step WHERE visit_id IN (
                          SELECT v.id FROM visit v WHERE NOT EXISTS (SELECT 1 FROM handover h WHERE h.visit_id = v.id))
                        ORDER BY visit_id, position, id
                        """).mapTo(Step.class).list());
    }

    /** Adds a step at the end of the order. */
    public Step add(long visitId, @Nullable Long treatmentId, PlannedStep step) {
        return ledger.write(handle -> get(handle, add(handle, visitId, treatmentId, step)));
    }

    /** Answers false, and changes nothing, when somebody else has changed the step meanwhile. */
    public boolean change(long id, int version, @Nullable Long treatmentId, PlannedStep step) {
        return ledger.write(handle -> handle.createUpdate("""
                                UPDATE step SET treatment_id = :treatment, name = :name, hands_low_min = :handsLowMin,
                                  hands_typical_min = :handsTypicalMin, hands_high_min = :handsHighMin,
                                  wait_low_h = :waitLowH, wait_typical_h = :waitTypicalH, wait_high_h = :waitHighH,
                                  needs = :needs, blocks_instrument = :blocksInstrument, version = version + 1
                                WHERE id = :id AND version = :version
                                """)
                        .bindMethods(step)
                        .bind("treatment", treatmentId)
                        .bind("id", id)
                        .bind("version", version)
                        .execute()
                == 1);
    }

    public void moveEarlier(long id) {
        ledger.change(handle -> swap(handle, get(handle, id), """
                SELECT * FROM step WHERE visit_id = :visit AND standing = 'IN_ORDER' AND position < :position
                ORDER BY position DESC LIMIT 1
                """));
    }

    public void moveLater(long id) {
        ledger.change(handle -> swap(handle, get(handle, id), """
                SELECT * FROM step WHERE visit_id = :visit AND standing = 'IN_ORDER' AND position > :position
                ORDER BY position LIMIT 1
                """));
    }

    /** Takes a step out of the order; answers false, and leaves it, when the diary tells of it. */
    public boolean drop(long id) {
        return ledger.write(handle -> handle.createUpdate("""
                                UPDATE step SET standing = 'DROPPED_BY_HAND', version = version + 1
                                WHERE id = :id AND NOT EXISTS (SELECT 1 FROM diary_entry_now WHERE step_id = :id)
                                """).bind("id", id).execute() == 1);
    }

    public void takeBack(long id) {
        ledger.change(handle -> stand(handle, id, Step.Standing.IN_ORDER));
    }

    static void stand(Handle handle, long id, Step.Standing standing) {
        handle.createUpdate("UPDATE step SET standing = :standing, version = version + 1 WHERE id = :id")
                .bind("standing", standing)
                .bind("id", id)
                .execute();
    }

    /** Ids of the steps the diary tells of. */
    static Set<Long> listBegun(Handle handle, long visitId) {
        return handle.createQuery(
                        "SELECT DISTINCT step_id FROM diary_entry_now WHERE visit_id = :visit AND step_id IS NOT NULL")
                .bind("visit", visitId)
                .mapTo(Long.class)
                .set();
    }

    /** Adds steps just before another one of the same visit. */
    static void addBefore(Handle handle, Step later, @Nullable Long treatmentId, List<PlannedStep> steps) {
        handle.createUpdate(
                        "UPDATE step SET position = position + :room WHERE visit_id = :visit AND position >= :position")
                .bind("room", steps.size())
                .bind("visit", later.visitId())
                .bind("position", later.position())
                .execute();
        int position = later.position();
        for (PlannedStep step : steps) {
            place(handle, add(handle, later.visitId(), treatmentId, step), position++);
        }
    }

    static long add(Handle handle, long visitId, @Nullable Long treatmentId, PlannedStep step) {
        return handle.createUpdate("""
                        INSERT INTO step (visit_id, treatment_id, position, name, hands_low_min, hands_typical_min,
                          hands_high_min, wait_low_h, wait_typical_h, wait_high_h, needs, blocks_instrument)
                        VALUES (:visit, :treatment,
                          (SELECT coalesce(max(position), 0) + 1 FROM step WHERE visit_id = :visit),
                          :name, :handsLowMin, :handsTypicalMin, :handsHighMin, :waitLowH, :waitTypicalH, :waitHighH,
                          :needs, :blocksInstrument)
                        """)
                .bindMethods(step)
                .bind("visit", visitId)
                .bind("treatment", treatmentId)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    static Step get(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM step WHERE id = :id")
                .bind("id", id)
                .mapTo(Step.class)
                .findOne()
                .orElseThrow(() -> new NotHere("step", id));
    }

    static List<Step> list(Handle handle, long visitId) {
        return handle.createQuery("SELECT * FROM step WHERE visit_id = :visit ORDER BY position, id")
                .bind("visit", visitId)
                .mapTo(Step.class)
                .list();
    }

    private static void swap(Handle handle, Step step, String neighbour) {
        Optional<Step> other = handle.createQuery(neighbour)
                .bind("visit", step.visitId())
                .bind("position", step.position())
                .mapTo(Step.class)
                .findOne();
        other.ifPresent(found -> {
            place(handle, step.id(), found.position());
            place(handle, found.id(), step.position());
        });
    }

    private static void place(Handle handle, long id, int position) {
        handle.createUpdate("UPDATE step SET position = :position WHERE id = :id")
                .bind("position", position)
                .bind("id", id)
                .execute();
    }
}
