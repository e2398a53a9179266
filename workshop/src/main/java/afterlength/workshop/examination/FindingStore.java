package afterlength.workshop.examination;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Keeps findings. Rows are only ever added: correcting, withdrawing and taking back a withdrawal each add a row that names the
 * one it replaces, and a row can be replaced only once, so that two people correcting at the same time do not part the history.
 */
public final class FindingStore {
    private final Ledger ledger;

    public FindingStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The findings that hold, in the order in which they were first written. */
    public List<Finding> listNow(long visitId) {
        return listHistories(visitId).stream()
                .filter(History::holds)
                .map(History::latest)
                .toList();
    }

    /** All findings with all their wordings, the withdrawn ones too. */
    public List<History<Finding>> listHistories(long visitId) {
        return History.of(
                ledger.read(handle -> handle.createQuery("SELECT * FROM finding WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(Finding.class)
                        .list()));
    }

    /** All wordings of the finding that this entry belongs to. */
    public History<Finding> history(long findingId) {
        return listHistories(get(findingId).visitId()).stream()
                .filter(history -> history.contains(findingId))
                .findFirst()
                .orElseThrow(() -> new NotHere("finding", findingId));
    }

    /** The wording that holds of the finding that this entry belongs to; nothing when it was withdrawn. */
    public Optional<Finding> findNow(long findingId) {
        return Optional.of(history(findingId)).filter(History::holds).map(History::latest);
    }

    public Finding get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM finding WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Finding.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("finding", id));
    }

    /** Ids of the photographs on which each entry of a visit was seen. */
    public Map<Long, List<Long>> photographs(long visitId) {
        return ledger.read(handle -> handle
                .createQuery("""
                        SELECT p.finding_id, p.photograph_id FROM finding_photograph p JOIN finding f ON f.id = p.finding_id
                        WHERE f.visit_id = :visit ORDER BY p.finding_id, p.photograph_id
                        """)
                .bind("visit", visitId)
                .map((row, context) -> Map.entry(row.getLong("finding_id"), row.getLong("photograph_id")))
                .stream()
                .collect(java.util.stream.Collectors.groupingBy(
                        Map.Entry::getKey,
                        LinkedHashMap::new,
                        java.util.stream.Collectors.mapping(
                                Map.Entry::getValue, java.util.stream.Collectors.toList()))));
    }

    /** Writes a new finding and answers its id; the id it carries is not looked at. */
    public long add(Finding finding, List<Long> photographIds) {
        return ledger.write(handle -> insert(handle, finding, photographIds));
    }

    /**
     * Writes a correction, which names the entry it replaces. Answers nothing, and changes nothing, when that entry has been
     * replaced meanwhile.
     */
    public Optional<Long> correct(Finding correction, List<Long> photographIds) {
        long replaced = named(correction);
        return ledger.write(handle -> isReplaced(handle, replaced)
                ? Optional.empty()
                : Optional.of(insert(handle, correction, photographIds)));
    }

    /** Withdraws a finding; its words and its pictures stay readable. Nothing happens when it was withdrawn already. */
    public void withdraw(long findingId, Instant at) {
        follow(findingId, true, at);
    }

    /** Takes a withdrawal back. Nothing happens when the finding holds. */
    public void bringBack(long findingId, Instant at) {
        follow(findingId, false, at);
    }

    private void follow(long findingId, boolean withdrawn, Instant at) {
        Finding latest = history(findingId).latest();
        if (latest.withdrawn() != withdrawn) {
            List<Long> seenOn = photographs(latest.visitId()).getOrDefault(latest.id(), List.of());
            correct(latest.again(latest.id(), withdrawn, at), seenOn);
        }
    }

    private static long named(Finding correction) {
        Long replaced = correction.replaces();
        if (replaced == null) {
            throw new IllegalArgumentException("a correction names the entry it replaces");
        }
        return replaced;
    }

    private static boolean isReplaced(Handle handle, long id) {
        return handle.createQuery("SELECT count(*) FROM finding WHERE replaces = :id")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    private static long insert(Handle handle, Finding finding, List<Long> photographIds) {
        long id = handle.createUpdate("""
                        INSERT INTO finding (visit_id, replaces, withdrawn, part, kind, place, size_mm, size_plus_minus_mm, size_reason,
                          age, hinders_playing, gets_worse, observation, interpretation, seen_at, hand, written_at)
                        VALUES (:visitId, :replaces, :withdrawn, :part, :kind, :place, :sizeMm, :sizePlusMinusMm, :sizeReason,
                          :age, :hindersPlaying, :getsWorse, :observation, :interpretation, :seenAt, :hand, :writtenAt)
                        """)
                .bindMethods(finding)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        for (long photograph : photographIds) {
            handle.createUpdate(
                            "INSERT INTO finding_photograph (finding_id, photograph_id) VALUES (:finding, :photograph)")
                    .bind("finding", id)
                    .bind("photograph", photograph)
                    .execute();
        }
        return id;
    }
}
