package afterlength.workshop.retouch;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps the losses of a visit. Rows are only added: one that was wrong is taken out by a row that replaces it. */
public final class RetouchStore {
    private final Ledger ledger;

    public RetouchStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The losses of a visit that hold, in the order of their writing. */
    public List<Retouch> listNow(long visitId) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM retouch_now WHERE visit_id = :visit ORDER BY id")
                .bind("visit", visitId)
                .mapTo(Retouch.class)
                .list());
    }

    public Retouch get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM retouch WHERE id = :id")
                .bind("id", id)
                .mapTo(Retouch.class)
                .findOne()
                .orElseThrow(() -> new NotHere("retouch", id)));
    }

    /** The colours that a recipe for it may use. */
    List<Long> colours(long retouchId) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT colour_id FROM retouch_colour WHERE retouch_id = :retouch ORDER BY colour_id")
                .bind("retouch", retouchId)
                .mapTo(Long.class)
                .list());
    }

    /** Writes a loss down and answers its number; the number it carries is not looked at. */
    public long add(Retouch retouch, Collection<Long> colours) {
        return ledger.write(handle -> insert(handle, retouch, colours));
    }

    /** Takes a loss out; its colours stay with the row that is replaced. */
    void withdraw(long id, Instant now) {
        Retouch held = get(id);
        ledger.change(handle -> insert(handle, held.again(true, now), List.of()));
    }

    private static long insert(Handle handle, Retouch retouch, Collection<Long> colours) {
        long id = handle.createUpdate("""
                        INSERT INTO retouch (visit_id, replaces, withdrawn, finding_id, place, ground_class, ground_spectral,
                          ground, target_class, target_spectral, target, colorants, film_coats, written_at, hand)
                        VALUES (:visitId, :replaces, :withdrawn, :findingId, :place, :groundClass, :groundSpectral,
                          :ground, :targetClass, :targetSpectral, :target, :colorants, :filmCoats, :writtenAt, :hand)
                        """)
                .bindMethods(retouch)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        for (long colour : colours) {
            handle.execute("INSERT INTO retouch_colour (retouch_id, colour_id) VALUES (?, ?)", id, colour);
        }
        return id;
    }
}
