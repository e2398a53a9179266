package afterlength.workshop.examination;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.List;

/** Keeps sittings. They are written and withdrawn; one that was written wrongly is withdrawn and written anew. */
public final class SittingStore {
    private final Ledger ledger;

    public SittingStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The sittings that hold, in the order in which they were written. */
    public List<Sitting> listNow(long visitId) {
        return listHistories(visitId).stream()
                .filter(History::holds)
                .map(History::latest)
                .toList();
    }

    public List<History<Sitting>> listHistories(long visitId) {
        return History.of(
                ledger.read(handle -> handle.createQuery("SELECT * FROM sitting WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(Sitting.class)
                        .list()));
    }

    public Sitting get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM sitting WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Sitting.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("sitting", id));
    }

    /** Writes a sitting and answers its id; the id it carries is not looked at. */
    public long add(Sitting sitting) {
        return ledger.write(handle -> handle.createUpdate("""
                        INSERT INTO sitting (visit_id, replaces, withdrawn, means, remark, temperature_c, humidity_pct, sat_at, hand, written_at)
                        VALUES (:visitId, :replaces, :withdrawn, :means, :remark, :temperatureC, :humidityPct, :satAt, :hand, :writtenAt)
                        """)
                .bindMethods(sitting)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one());
    }

    /** Withdraws a sitting, and answers the entry that says so. Nothing happens when it was withdrawn already. */
    public Sitting withdraw(long sittingId, Instant at) {
        return follow(sittingId, true, at);
    }

    /** Takes a withdrawal back. Nothing happens when the sitting holds. */
    public Sitting bringBack(long sittingId, Instant at) {
        return follow(sittingId, false, at);
    }

    private Sitting follow(long sittingId, boolean withdrawn, Instant at) {
        Sitting latest = latest(sittingId);
        return latest.withdrawn() == withdrawn ? latest : get(add(latest.again(latest.id(), withdrawn, at)));
    }

    private Sitting latest(long sittingId) {
        return listHistories(get(sittingId).visitId()).stream()
                .filter(history -> history.contains(sittingId))
                .map(History::latest)
                .findFirst()
                .orElseThrow(() -> new NotHere("sitting", sittingId));
    }
}
