package afterlength.workshop.invoice;

/**
 * What the shop prints on every bill.
 *
 * @param taxId number under which the tax office knows the shop
 * @param terms how and until when to pay
 * @param noTaxReason why lines without tax carry none
 */
public record InvoiceRules(Rounding rounding, String taxId, String terms, String noTaxReason) {
    static final InvoiceRules FRESH = new InvoiceRules(Rounding.PER_TOTAL, "", "", "");
}
