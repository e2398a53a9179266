package afterlength.workshop.invoice;

import afterlength.workshop.ledger.Ledger;
import java.util.Map;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Keeps the shop's rules for bills among its settings, one row a name. */
public final class InvoiceRulesStore {
    private final Ledger ledger;

    public InvoiceRulesStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public InvoiceRules get() {
        Map<String, String> kept = ledger.read(InvoiceRulesStore::rows);
        InvoiceRules fresh = InvoiceRules.FRESH;
        return new InvoiceRules(
                Rounding.valueOf(
                        kept.getOrDefault("invoice_rounding", fresh.rounding().name())),
                kept.getOrDefault("invoice_tax_id", fresh.taxId()),
                kept.getOrDefault("invoice_terms", fresh.terms()),
                kept.getOrDefault("invoice_no_tax_reason", fresh.noTaxReason()));
    }

    public void put(InvoiceRules rules) {
        ledger.change(handle -> {
            put(handle, "invoice_rounding", rules.rounding().name());
            put(handle, "invoice_tax_id", rules.taxId());
            put(handle, "invoice_terms", rules.terms());
            put(handle, "invoice_no_tax_reason", rules.noTaxReason());
        });
    }

    private static Map<String, String> rows(Handle handle) {
        return handle
                .createQuery("SELECT name, value FROM setting WHERE name LIKE 'invoice\\_%' ESCAPE '\\'")
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
