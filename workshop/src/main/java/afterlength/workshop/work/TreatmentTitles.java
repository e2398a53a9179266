package afterlength.workshop.work;

import afterlength.workshop.ledger.Ledger;
import java.util.AbstractMap.SimpleImmutableEntry;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the treatments of a visit are called, in their order. */
final class TreatmentTitles {
    private final Ledger ledger;

    TreatmentTitles(Ledger ledger) {
        this.ledger = ledger;
    }

    Map<Long, String> of(long visitId) {
        Map<Long, String> titles = new LinkedHashMap<>();
        ledger.read(handle -> handle.createQuery(
                                "SELECT id, title FROM treatment WHERE visit_id = :visit ORDER BY position, id")
                        .bind("visit", visitId)
                        .map((row, context) -> new SimpleImmutableEntry<>(row.getLong("id"), row.getString("title")))
                        .list())
                .forEach(title -> titles.put(title.getKey(), title.getValue()));
        return titles;
    }
}
