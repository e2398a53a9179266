package afterlength.workshop.work;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the diary. Rows are only added: a correction, a withdrawal and the taking back of a withdrawal are each a new row that
 * names the one it replaces. Entries are listed in the order of what they tell, not of their writing.
 */
public final class DiaryStore {
    private final Ledger ledger;

    public DiaryStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public DiaryEntry get(long id) {
        return ledger.read(handle -> get(handle, id));
    }

    public Optional<DiaryEntry> find(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM diary_entry_told WHERE id = :id")
                .bind("id", id)
                .mapTo(DiaryEntry.class)
                .findOne());
    }

    /** The diary of a visit as it holds now. */
    public List<DiaryEntry> listNow(long visitId) {
        return ledger.read(handle -> listNow(handle, visitId));
    }

    /** Every row of a visit's diary, with what was corrected or taken out, in the order of writing. */
    public List<DiaryEntry> listHistory(long visitId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM diary_entry_told WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(DiaryEntry.class)
                        .list());
    }

    /** The diaries of all visits that have not been handed over. */
    List<DiaryEntry> listInHouse() {
        return ledger.read(
                handle -> handle.createQuery("""
                        SELECT * FROM diary_entry_now d
                        WHERE visit_id IN (
                          SELECT v.id FROM visit v WHERE NOT EXISTS (SELECT 1 FROM handover h WHERE h.visit_id = v.id))
                        ORDER BY at, first_id
                        """).mapTo(DiaryEntry.class).list());
    }

    public DiaryEntry write(Writing writing, Instant now) {
        return ledger.write(handle -> add(handle, writing, null, false, now));
    }

    /** Within a change of another stage, so that its own rows and the diary's stand or fall together. */
    public static DiaryEntry write(Handle handle, Writing writing, Instant now) {
        return add(handle, writing, null, false, now);
    }

    /** Answers nothing, and writes nothing, when the entry has been replaced meanwhile. */
    public Optional<DiaryEntry> correct(long id, Writing writing, Instant now) {
        return ledger.write(handle -> replace(handle, id, writing, false, now));
    }

    /** Takes an entry out of the diary; {@link #takeBack} puts it in again. */
    public Optional<DiaryEntry> withdraw(long id, Instant now) {
        return ledger.write(handle -> replace(handle, id, get(handle, id).writing(), true, now));
    }

    /** Puts a withdrawn entry in again. */
    public Optional<DiaryEntry> takeBack(long withdrawalId, Instant now) {
        return ledger.write(handle ->
                replace(handle, withdrawalId, get(handle, withdrawalId).writing(), false, now));
    }

    static List<DiaryEntry> listNow(Handle handle, long visitId) {
        return handle.createQuery("SELECT * FROM diary_entry_now WHERE visit_id = :visit ORDER BY at, first_id")
                .bind("visit", visitId)
                .mapTo(DiaryEntry.class)
                .list();
    }

    static DiaryEntry add(Handle handle, Writing writing, @Nullable Long replaces, boolean withdrawn, Instant now) {
        long id = handle.createUpdate("""
                        INSERT INTO diary_entry (visit_id, step_id, replaces, withdrawn, what, at, minutes, more_hours, hand,
                          material, reversible_with, remark, written_at, first_id, first_written_at)
                        VALUES (:visitId, :stepId, :replaces, :withdrawn, :what, :at, :minutes, :moreHours, :hand,
                          :material, :reversibleWith, :remark, :writtenAt,
                          (SELECT first_id FROM diary_entry_told WHERE id = :replaces),
                          (SELECT first_written_at FROM diary_entry_told WHERE id = :replaces))
                        """)
                .bindMethods(writing)
                .bind("replaces", replaces)
                .bind("withdrawn", withdrawn)
                .bind("writtenAt", now.truncatedTo(ChronoUnit.SECONDS))
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return get(handle, id);
    }

    private static Optional<DiaryEntry> replace(
            Handle handle, long id, Writing writing, boolean withdrawn, Instant now) {
        boolean stands = handle.createQuery("SELECT count(*) FROM diary_entry WHERE replaces = :id")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one()
                == 0;
        return stands ? Optional.of(add(handle, writing, id, withdrawn, now)) : Optional.empty();
    }

    private static DiaryEntry get(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM diary_entry_told WHERE id = :id")
                .bind("id", id)
                .mapTo(DiaryEntry.class)
                .findOne()
                .orElseThrow(() -> new NotHere("diary entry", id));
    }
}
