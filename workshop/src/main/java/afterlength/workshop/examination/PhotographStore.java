package afterlength.workshop.examination;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.Optional;

/** Keeps what is said about photographs; their files lie in {@link afterlength.workshop.ledger.Photographs}. */
public final class PhotographStore {
    private final Ledger ledger;

    public PhotographStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Photograph get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM photograph WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Photograph.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("photograph", id));
    }

    /** The photographs of a visit that are in view, in the order of adding. */
    public List<Photograph> list(long visitId) {
        return listWhere(visitId, false);
    }

    public List<Photograph> list(long visitId, Moment moment) {
        return list(visitId).stream()
                .filter(photograph -> photograph.moment() == moment)
                .toList();
    }

    public List<Photograph> listPutAway(long visitId) {
        return listWhere(visitId, true);
    }

    private List<Photograph> listWhere(long visitId, boolean putAway) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM photograph WHERE visit_id = :visit AND put_away = :away ORDER BY id")
                .bind("visit", visitId)
                .bind("away", putAway)
                .mapTo(Photograph.class)
                .list());
    }

    /** The photograph of this visit with exactly these bytes, in view or put away. */
    public Optional<Photograph> findSame(long visitId, String sha256) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM photograph WHERE visit_id = :visit AND sha256 = :sha256 ORDER BY id LIMIT 1")
                .bind("visit", visitId)
                .bind("sha256", sha256)
                .mapTo(Photograph.class)
                .findOne());
    }

    /** Adds a photograph whose file is kept already, and answers its id; the id it carries is not looked at. */
    public long add(Photograph photograph) {
        return ledger.write(handle -> handle.createUpdate("""
                        INSERT INTO photograph (visit_id, sha256, media_type, width_px, height_px, moment, view, caption, added_at, put_away)
                        VALUES (:visitId, :sha256, :mediaType, :widthPx, :heightPx, :moment, :view, :caption, :addedAt, :putAway)
                        """)
                .bindMethods(photograph)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one());
    }

    public void describe(long id, PhotographWords words) {
        ledger.change(handle -> handle.createUpdate(
                        "UPDATE photograph SET moment = :moment, view = :view, caption = :caption WHERE id = :id")
                .bindMethods(words)
                .bind("id", id)
                .execute());
    }

    public void putAway(long id) {
        set(id, true);
    }

    public void bringBack(long id) {
        set(id, false);
    }

    private void set(long id, boolean away) {
        ledger.change(handle -> handle.createUpdate("UPDATE photograph SET put_away = :away WHERE id = :id")
                .bind("away", away)
                .bind("id", id)
                .execute());
    }
}
