package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A bill or a credit note with every word it was printed with. Never changed: a wrong bill is credited as a whole, and a right one
 * is made.
 *
 * @param credits the bill it takes back; null for a bill
 * @param agreementId what it was made from; null when nothing was agreed
 * @param serial counted from 1 within the year, without a gap
 * @param suppliedOn the day the work was finished or the goods were given
 * @param seller name and address, one a line
 * @param buyer likewise
 * @param subject instrument and visit
 * @param paidMinor what had been paid before
 * @param terms how and until when to pay
 * @param noTaxReason why a line carries no tax; empty when every line does
 */
public record Invoice(
        long id,
        long visitId,
        @Nullable Long credits,
        @Nullable Long agreementId,
        int year,
        int serial,
        LocalDate issuedOn,
        LocalDate suppliedOn,
        String seller,
        String sellerTaxId,
        String buyer,
        String subject,
        String currency,
        Rounding rounding,
        Money netMinor,
        Money taxMinor,
        Money totalMinor,
        Money paidMinor,
        String terms,
        String noTaxReason,
        String remark,
        Instant writtenAt,
        String hand) {

    /** "2026-0007". */
    public String number() {
        return String.format(Locale.ROOT, "%04d-%04d", year, serial);
    }

    public boolean isCredit() {
        return credits != null;
    }

    /** "Invoice 2026-0007". */
    public String title() {
        return (isCredit() ? "Credit note " : "Invoice ") + number();
    }

    Money dueMinor() {
        return totalMinor.plus(paidMinor.negated());
    }
}
