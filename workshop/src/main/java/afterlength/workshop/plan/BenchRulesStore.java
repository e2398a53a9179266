package afterlength.workshop.plan;

import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Keeps the rules of the bench among the shop's settings, a row a name. */
public final class BenchRulesStore {
    private static final String OWN = "bench_hours_of:";

    private final Ledger ledger;
    private final SettingsStore settings;

    public BenchRulesStore(Ledger ledger, SettingsStore settings) {
        this.ledger = ledger;
        this.settings = settings;
    }

    public BenchRules get() {
        BenchRules fresh = BenchRules.fresh(settings.get().closesAt());
        Map<String, String> kept = ledger.read(BenchRulesStore::rows);
        Map<String, WeekHours> own = new HashMap<>();
        kept.forEach((name, value) -> {
            if (name.startsWith(OWN) && !value.isEmpty()) {
                own.put(name.substring(OWN.length()), HoursText.read(value));
            }
        });
        return new BenchRules(
                kept.containsKey("bench_hours") ? HoursText.read(kept.getOrDefault("bench_hours", "")) : fresh.hours(),
                own,
                HoursText.read(kept.getOrDefault("bench_glue", "")),
                Integer.parseInt(kept.getOrDefault("bench_warm_up_min", Integer.toString(fresh.warmUp_min()))),
                Integer.parseInt(kept.getOrDefault("bench_clamp_sets", Integer.toString(fresh.clampSets()))),
                Integer.parseInt(kept.getOrDefault("bench_cupboard", Integer.toString(fresh.cupboardPlaces()))));
    }

    public void put(BenchRules rules) {
        ledger.change(handle -> {
            handle.createUpdate("DELETE FROM setting WHERE name LIKE :own")
                    .bind("own", OWN + "%")
                    .execute();
            put(handle, "bench_hours", rules.hours().text());
            put(handle, "bench_glue", rules.glue().text());
            put(handle, "bench_warm_up_min", Integer.toString(rules.warmUp_min()));
            put(handle, "bench_clamp_sets", Integer.toString(rules.clampSets()));
            put(handle, "bench_cupboard", Integer.toString(rules.cupboardPlaces()));
            rules.own().forEach((hand, hours) -> put(handle, OWN + hand, hours.text()));
        });
    }

    private static Map<String, String> rows(Handle handle) {
        Map<String, String> rows = new HashMap<>();
        handle.createQuery("SELECT name, value FROM setting WHERE name LIKE 'bench_%'")
                .map((row, context) -> Map.entry(row.getString("name"), row.getString("value")))
                .forEach(row -> rows.put(row.getKey(), row.getValue()));
        return rows;
    }

    private static void put(Handle handle, String name, String value) {
        handle.createUpdate("""
                        INSERT INTO setting (name, value) VALUES (:name, :value)
                        ON CONFLICT (name) DO UPDATE SET value = excluded.value
                        """).bind("name", name).bind("value", value).execute();
    }
}
