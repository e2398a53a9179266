package afterlength.workshop.retouch;

import afterlength.craft.varnish.Ingredient;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** The varnish book: batches with what went into them, and the coats that were watched. */
public final class VarnishStore {
    private final Ledger ledger;

    public VarnishStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<Varnish> list() {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM varnish ORDER BY put_away, name COLLATE NOCASE, id")
                        .mapTo(Varnish.class)
                        .list());
    }

    public Varnish get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM varnish WHERE id = :id")
                .bind("id", id)
                .mapTo(Varnish.class)
                .findOne()
                .orElseThrow(() -> new NotHere("varnish", id)));
    }

    public List<Ingredient> ingredients(long varnishId) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT name, mass_g, density_kg_m3, part FROM varnish_part WHERE varnish_id = :id ORDER BY position
                        """)
                .bind("id", varnishId)
                .mapTo(Ingredient.class)
                .list());
    }

    /** Writes a batch down and answers its number; the number it carries is not looked at. */
    public long add(Varnish varnish, List<Ingredient> ingredients) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO varnish (name, made_on, remark, written_at, hand)
                            VALUES (:name, :madeOn, :remark, :writtenAt, :hand)
                            """)
                    .bindMethods(varnish)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            for (int n = 0; n < ingredients.size(); n++) {
                insert(handle, id, n, ingredients.get(n));
            }
            return id;
        });
    }

    public void put(long id, boolean away) {
        ledger.change(handle -> handle.execute("UPDATE varnish SET put_away = ? WHERE id = ?", away, id));
    }

    /** The coats that hold, the first one first. */
    public List<VarnishCoat> coats(long varnishId) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM varnish_coat_now WHERE varnish_id = :id ORDER BY laid_on, id")
                .bind("id", varnishId)
                .mapTo(VarnishCoat.class)
                .list());
    }

    public void add(VarnishCoat coat) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO varnish_coat (varnish_id, replaces, withdrawn, laid_on, touch_dry_h, temperature_c,
                          humidity_pct, remark, written_at, hand)
                        VALUES (:varnishId, :replaces, :withdrawn, :laidOn, :touchDryH, :temperatureC, :humidityPct,
                          :remark, :writtenAt, :hand)
                        """).bindMethods(coat).execute());
    }

    private static void insert(Handle handle, long varnishId, int position, Ingredient one) {
        handle.createUpdate("""
                        INSERT INTO varnish_part (varnish_id, position, name, mass_g, density_kg_m3, part)
                        VALUES (:varnish, :position, :name, :mass_g, :density_kg_m3, :part)
                        """)
                .bindMethods(one)
                .bind("varnish", varnishId)
                .bind("position", position)
                .execute();
    }
}
