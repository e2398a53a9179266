package afterlength.workshop.invoice;

import afterlength.workshop.desk.Typed;
import java.util.Map;

/** Reads the rules for bills from what was typed. */
final class InvoiceRulesForm {
    private InvoiceRulesForm() {}

    static InvoiceRules read(Typed typed, InvoiceRules before) {
        Rounding rounding = typed.choice("rounding", "How tax is rounded", Rounding.class);
        return new InvoiceRules(
                rounding == null ? before.rounding() : rounding,
                typed.text("tax_id", "The tax number", 80),
                typed.text("terms", "How to pay", 600),
                typed.text("no_tax_reason", "Why no tax is added", 400));
    }

    static Typed typedOf(InvoiceRules rules) {
        return Typed.known(Map.of(
                "rounding", rules.rounding().name(),
                "tax_id", rules.taxId(),
                "terms", rules.terms(),
                "no_tax_reason", rules.noTaxReason()));
    }
}
