package afterlength.workshop.plan;

import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Keeps how much visits matter; what nobody said is ordinary. */
public final class UrgencyStore {
    private final Ledger ledger;

    public UrgencyStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Map<Long, Urgency> byVisit() {
        Map<Long, Urgency> all = new HashMap<>();
        ledger.read(handle -> handle.createQuery("SELECT visit_id, urgency FROM visit_urgency_now ORDER BY id")
                        .map((row, context) ->
                                Map.entry(row.getLong("visit_id"), Urgency.valueOf(row.getString("urgency"))))
                        .list())
                .forEach(row -> all.put(row.getKey(), row.getValue()));
        return all;
    }

    /** Says how much a visit matters and, where a day is given, what is promised: both or neither. */
    public void put(long visitId, Urgency urgency, @Nullable LocalDate promised, String hand, Instant now) {
        ledger.change(handle -> {
            handle.createUpdate("""
                            INSERT INTO visit_urgency (replaces, visit_id, urgency, hand, written_at)
                            VALUES ((SELECT max(id) FROM visit_urgency WHERE visit_id = :visit), :visit, :urgency, :hand, :now)
                            """)
                    .bind("visit", visitId)
                    .bind("urgency", urgency.name())
                    .bind("hand", hand)
                    .bind("now", now.truncatedTo(ChronoUnit.SECONDS))
                    .execute();
            if (promised != null) {
                VisitStore.promise(handle, visitId, promised);
            }
        });
    }
}
