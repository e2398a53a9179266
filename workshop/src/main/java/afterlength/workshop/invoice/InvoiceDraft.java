package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A bill before it has its number; parameters as of {@link Invoice}. */
public record InvoiceDraft(
        long visitId,
        @Nullable Long agreementId,
        LocalDate suppliedOn,
        String seller,
        String sellerTaxId,
        String buyer,
        String subject,
        String currency,
        Rounding rounding,
        List<InvoiceLine> lines,
        Money paid,
        String terms,
        String noTaxReason,
        String remark,
        String hand) {
    public InvoiceDraft {
        lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a bill has at least one line");
        }
    }

    InvoiceSum sum() {
        return InvoiceSum.of(lines, rounding);
    }
}
