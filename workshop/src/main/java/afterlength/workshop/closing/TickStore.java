package afterlength.workshop.closing;

import afterlength.workshop.ledger.Ledger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps ticks. Rows are only ever added. */
public final class TickStore {
    private final Ledger ledger;

    public TickStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** All of a visit in the order of writing. */
    public List<Tick> listOf(long visitId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM closing_tick WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(Tick.class)
                        .list());
    }

    /** The tick that holds for each thing that was ever ticked. */
    Map<String, Tick> latest(long visitId) {
        Map<String, Tick> latest = new LinkedHashMap<>();
        listOf(visitId).forEach(tick -> latest.put(tick.thing(), tick));
        return latest;
    }

    public void add(Tick tick) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO closing_tick (visit_id, thing, title, done, note, hand, written_at)
                        VALUES (:visitId, :thing, :title, :done, :note, :hand, :writtenAt)
                        """).bindMethods(tick).execute());
    }
}
