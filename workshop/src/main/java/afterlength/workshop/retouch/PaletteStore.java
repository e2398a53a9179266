package afterlength.workshop.retouch;

import afterlength.craft.colour.Drawdown;
import afterlength.craft.colour.FittedColorant;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps the palette: colours with the drawdowns they come from. Neither changes; a colour can be put away. */
public final class PaletteStore {
    private final Ledger ledger;

    public PaletteStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The colours that can be mixed with. */
    public List<PaletteColour> list() {
        return list(false);
    }

    public List<PaletteColour> listPutAway() {
        return list(true);
    }

    public PaletteColour get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM palette_colour WHERE id = :id")
                .bind("id", id)
                .mapTo(PaletteColour.class)
                .findOne()
                .orElseThrow(() -> new NotHere("colour", id)));
    }

    /** Those of these numbers, put away or not, in the order of the palette. */
    List<PaletteColour> listOf(Collection<Long> ids) {
        return ledger.read(handle -> handle
                .createQuery("SELECT * FROM palette_colour ORDER BY name COLLATE NOCASE, id")
                .mapTo(PaletteColour.class)
                .list()
                .stream()
                .filter(colour -> ids.contains(colour.id()))
                .toList());
    }

    List<PaletteFilm> films(long colourId) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT coats, ground, film, difference FROM palette_film WHERE colour_id = :colour ORDER BY position
                        """)
                .bind("colour", colourId)
                .mapTo(PaletteFilm.class)
                .list());
    }

    /** Fits a colour and keeps it. */
    public PaletteColour add(NewColour colour, Instant now) {
        return add(colour, colour.fitted(), now);
    }

    PaletteColour add(NewColour colour, FittedColorant fitted, Instant now) {
        long kept = ledger.write(handle -> {
            long id = insert(handle, colour, fitted, now.truncatedTo(ChronoUnit.SECONDS));
            for (int n = 0; n < colour.drawdowns().size(); n++) {
                insertFilm(
                        handle,
                        id,
                        n,
                        colour.drawdowns().get(n),
                        fitted.differences().get(n));
            }
            return id;
        });
        return get(kept);
    }

    public void putAway(long id) {
        put(id, true);
    }

    public void takeBack(long id) {
        put(id, false);
    }

    private static long insert(Handle handle, NewColour colour, FittedColorant fitted, Instant now) {
        return handle.createUpdate("""
                        INSERT INTO palette_colour (name, medium, reversible_with, colour_class, spectral, absorption, scatter,
                          largest_difference, written_at, hand)
                        VALUES (:name, :medium, :reversibleWith, :colourClass, :spectral, :absorption, :scatter,
                          :largestDifference, :now, :hand)
                        """)
                .bindMethods(colour)
                .bind("absorption", fitted.colorant().absorption())
                .bind("scatter", fitted.colorant().scatter())
                .bind("largestDifference", fitted.largestDifference())
                .bind("now", now)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    private static void insertFilm(Handle handle, long colourId, int position, Drawdown drawdown, double difference) {
        handle.createUpdate("""
                        INSERT INTO palette_film (colour_id, position, coats, ground, film, difference)
                        VALUES (:colour, :position, :coats, :ground, :film, :difference)
                        """)
                .bind("colour", colourId)
                .bind("position", position)
                .bind("coats", drawdown.thickness_um())
                .bind("ground", drawdown.ground())
                .bind("film", drawdown.film())
                .bind("difference", difference)
                .execute();
    }

    private void put(long id, boolean away) {
        ledger.change(handle -> handle.createUpdate("UPDATE palette_colour SET put_away = :away WHERE id = :id")
                .bind("away", away)
                .bind("id", id)
                .execute());
    }

    private List<PaletteColour> list(boolean away) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT * FROM palette_colour WHERE put_away = :away ORDER BY name COLLATE NOCASE, id
                        """)
                .bind("away", away)
                .mapTo(PaletteColour.class)
                .list());
    }
}
