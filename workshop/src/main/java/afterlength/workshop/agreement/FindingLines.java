package afterlength.workshop.agreement;

import afterlength.workshop.ledger.Ledger;
import java.util.List;

/** The findings of a visit that hold now, as this stage reads them. */
public final class FindingLines {
    private final Ledger ledger;

    public FindingLines(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<FindingLine> listNow(long visitId) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT id, part, kind, place, size_mm, size_plus_minus_mm, hinders_playing, gets_worse, observation
                        FROM finding_now WHERE visit_id = :visit ORDER BY id
                        """)
                .bind("visit", visitId)
                .mapTo(FindingLine.class)
                .list());
    }
}
