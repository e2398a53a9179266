package afterlength.workshop.retouch;

import afterlength.workshop.ledger.Ledger;
import java.util.List;

/** Keeps the worn areas of a visit. Rows are only added. */
public final class WornAreaStore {
    private final Ledger ledger;

    public WornAreaStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<WornArea> listNow(long visitId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM varnish_area_now WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(WornArea.class)
                        .list());
    }

    public void add(WornArea area) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO varnish_area (visit_id, finding_id, varnish_id, replaces, withdrawn, area_cm2, plus_minus_cm2,
                          dry_um, wet_coat_um, written_at, hand)
                        VALUES (:visitId, :findingId, :varnishId, :replaces, :withdrawn, :areaCm2, :plusMinusCm2,
                          :dryUm, :wetCoatUm, :writtenAt, :hand)
                        """).bindMethods(area).execute());
    }
}
