package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import org.jspecify.annotations.Nullable;

/**
 * One line of a bill.
 *
 * @param treatmentId the agreed line it bills; null for anything beside the agreement, such as strings sold
 * @param minutes hands-on minutes from the diary; null when none were counted
 * @param netMinor before tax; below nothing on a credit note
 */
public record InvoiceLine(
        long invoiceId,
        int position,
        @Nullable Long treatmentId,
        String title,
        @Nullable Integer minutes,
        Money netMinor,
        int taxPermille) {

    InvoiceLine credited(long creditNote) {
        return new InvoiceLine(creditNote, position, treatmentId, title, minutes, netMinor.negated(), taxPermille);
    }

    InvoiceLine on(long invoice, int place) {
        return new InvoiceLine(invoice, place, treatmentId, title, minutes, netMinor, taxPermille);
    }
}
