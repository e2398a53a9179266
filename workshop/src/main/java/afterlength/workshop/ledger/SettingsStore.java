package afterlength.workshop.ledger;

import afterlength.craft.units.Money;
import java.time.LocalTime;
import java.util.Map;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Keeps the settings as one row a name. */
public final class SettingsStore {
    private final Ledger ledger;

    public SettingsStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Settings get() {
        Map<String, String> kept = ledger.read(SettingsStore::rows);
        Settings fresh = Settings.FRESH;
        return new Settings(
                kept.getOrDefault("shop_name", fresh.shopName()),
                kept.getOrDefault("address", fresh.address()),
                kept.containsKey("hands")
                        ? kept.getOrDefault("hands", "").lines().toList()
                        : fresh.hands(),
                kept.getOrDefault("currency", fresh.currency()),
                new Money(Long.parseLong(kept.getOrDefault("per_hour_minor", "0"))),
                Integer.parseInt(kept.getOrDefault("tax_permille", "0")),
                Boolean.parseBoolean(kept.getOrDefault("letter_paper", "false")),
                LocalTime.parse(kept.getOrDefault("closes_at", fresh.closesAt().toString())),
                Boolean.parseBoolean(kept.getOrDefault("demonstration", "false")));
    }

    public void put(Settings settings) {
        ledger.change(handle -> {
            put(handle, "shop_name", settings.shopName());
            put(handle, "address", settings.address());
            put(handle, "hands", String.join("\n", settings.hands()));
            put(handle, "currency", settings.currency());
            put(handle, "per_hour_minor", Long.toString(settings.perHour().minor()));
            put(handle, "tax_permille", Integer.toString(settings.taxPermille()));
            put(handle, "letter_paper", Boolean.toString(settings.letterPaper()));
            put(handle, "closes_at", settings.closesAt().toString());
            put(handle, "demonstration", Boolean.toString(settings.demonstration()));
        });
    }

    private static Map<String, String> rows(Handle handle) {
        return handle
                .createQuery("SELECT name, value FROM setting")
                .map((row, context) -> Map.entry(row.getString("name"), row.getString("value")))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static void put(Handle handle, String name, String value) {
        handle.createUpdate("""
                        INSERT INTO setting (name, value) VALUES (:name, :value)
                        ON CONFLICT (name) DO UPDATE SET value = excluded.value
                        """).bind("name", name).bind("value", value).execute();
    }
}
