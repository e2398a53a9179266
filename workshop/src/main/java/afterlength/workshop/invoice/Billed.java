package afterlength.workshop.invoice;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bill with its lines.
 *
 * @param counterpart of a bill the credit note that takes it back, of a credit note the bill it takes back; null when there is none
 */
record Billed(
        Invoice invoice, List<InvoiceLine> lines, @Nullable Invoice counterpart) {
    InvoiceSum sum() {
        return InvoiceSum.of(lines, invoice.rounding());
    }

    /** A bill that still counts. */
    boolean standing() {
        return !invoice.isCredit() && counterpart == null;
    }

    boolean bills(long treatment) {
        return lines.stream().anyMatch(line -> line.treatmentId() != null && line.treatmentId() == treatment);
    }
}
