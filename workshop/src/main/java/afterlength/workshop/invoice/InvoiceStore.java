package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Keeps bills. Rows are only ever added; a number is given in the transaction that keeps the bill, so that a bill that is not kept
 * takes none, and the database refuses a gap whoever asks.
 */
public final class InvoiceStore {
    private final Ledger ledger;
    private final Clock clock;

    public InvoiceStore(Ledger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    public Invoice get(long id) {
        return ledger.read(handle -> find(handle, id)).orElseThrow(() -> new NotHere("invoice", id));
    }

    /** All bills and credit notes of the shop, the latest first. */
    public List<Invoice> list() {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM invoice ORDER BY year DESC, serial DESC")
                .mapTo(Invoice.class)
                .list());
    }

    /** Those of a visit, in the order of their numbers. */
    public List<Invoice> listOf(long visitId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM invoice WHERE visit_id = :visit ORDER BY year, serial")
                        .bind("visit", visitId)
                        .mapTo(Invoice.class)
                        .list());
    }

    public List<InvoiceLine> listLines(long invoiceId) {
        return ledger.read(handle -> lines(handle, invoiceId));
    }

    /** A bill with its lines and what takes it back. */
    Billed billed(Invoice invoice) {
        return ledger.read(handle -> new Billed(
                invoice,
                lines(handle, invoice.id()),
                counterpart(handle, invoice).orElse(null)));
    }

    /** The day of the newest bill; the next one cannot be older. */
    Optional<LocalDate> findLatestDay() {
        return ledger.read(handle -> handle.createQuery("SELECT max(issued_on) FROM invoice")
                .mapTo(LocalDate.class)
                .findOne());
    }

    /** Gives the draft today's date and the next number, and keeps it. */
    public Invoice issue(InvoiceDraft draft) {
        InvoiceSum sum = draft.sum();
        return ledger.write(handle -> {
            LocalDate today = LocalDate.now(clock);
            Invoice invoice = new Invoice(
                    0,
                    draft.visitId(),
                    null,
                    draft.agreementId(),
                    today.getYear(),
                    nextSerial(handle, today.getYear()),
                    today,
                    draft.suppliedOn(),
                    draft.seller(),
                    draft.sellerTaxId(),
                    draft.buyer(),
                    draft.subject(),
                    draft.currency(),
                    draft.rounding(),
                    sum.net(),
                    sum.tax(),
                    sum.total(),
                    draft.paid(),
                    draft.terms(),
                    draft.noTaxReason(),
                    draft.remark(),
                    clock.instant().truncatedTo(ChronoUnit.SECONDS),
                    draft.hand());
            long id = insert(handle, invoice);
            int place = 0;
            for (InvoiceLine line : draft.lines()) {
                insert(handle, line.on(id, ++place));
            }
            return find(handle, id).orElseThrow();
        });
    }

    /**
     * Takes a bill back as a whole with a number of its own. Answers the credit note there is when it was taken back already.
     *
     * @throws IllegalArgumentException for a credit note, which cannot be taken back; the bill is made anew instead
     */
    public Invoice credit(long invoiceId, String reason, String hand) {
        return ledger.write(handle -> {
            Invoice bill = find(handle, invoiceId).orElseThrow(() -> new NotHere("invoice", invoiceId));
            if (bill.isCredit()) {
                throw new IllegalArgumentException(bill.title() + " takes a bill back and cannot be taken back itself");
            }
            return counterpart(handle, bill).orElseGet(() -> credit(handle, bill, reason, hand));
        });
    }

    private Invoice credit(Handle handle, Invoice bill, String reason, String hand) {
        LocalDate today = LocalDate.now(clock);
        Invoice note = new Invoice(
                0,
                bill.visitId(),
                bill.id(),
                bill.agreementId(),
                today.getYear(),
                nextSerial(handle, today.getYear()),
                today,
                bill.suppliedOn(),
                bill.seller(),
                bill.sellerTaxId(),
                bill.buyer(),
                bill.subject(),
                bill.currency(),
                bill.rounding(),
                bill.netMinor().negated(),
                bill.taxMinor().negated(),
                bill.totalMinor().negated(),
                Money.NOTHING,
                "",
                bill.noTaxReason(),
                reason,
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                hand);
        long id = insert(handle, note);
        lines(handle, bill.id()).forEach(line -> insert(handle, line.credited(id)));
        return find(handle, id).orElseThrow();
    }

    private static Optional<Invoice> counterpart(Handle handle, Invoice invoice) {
        return handle.createQuery("SELECT * FROM invoice WHERE credits = :id OR id = :credited")
                .bind("id", invoice.id())
                .bind("credited", invoice.credits())
                .mapTo(Invoice.class)
                .findOne();
    }

    private static Optional<Invoice> find(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM invoice WHERE id = :id")
                .bind("id", id)
                .mapTo(Invoice.class)
                .findOne();
    }

    private static List<InvoiceLine> lines(Handle handle, long invoiceId) {
        return handle.createQuery("SELECT * FROM invoice_line WHERE invoice_id = :id ORDER BY position")
                .bind("id", invoiceId)
                .mapTo(InvoiceLine.class)
                .list();
    }

    private static int nextSerial(Handle handle, int year) {
        return handle.createQuery("SELECT coalesce(max(serial), 0) + 1 FROM invoice WHERE year = :year")
                .bind("year", year)
                .mapTo(Integer.class)
                .one();
    }

    private static long insert(Handle handle, Invoice invoice) {
        return handle.createUpdate("""
                        INSERT INTO invoice (visit_id, credits, agreement_id, year, serial, issued_on, supplied_on, seller,
                          seller_tax_id, buyer, subject, currency, rounding, net_minor, tax_minor, total_minor, paid_minor,
                          terms, no_tax_reason, remark, written_at, hand)
                        VALUES (:visitId, :credits, :agreementId, :year, :serial, :issuedOn, :suppliedOn, :seller,
                          :sellerTaxId, :buyer, :subject, :currency, :rounding, :netMinor, :taxMinor, :totalMinor, :paidMinor,
                          :terms, :noTaxReason, :remark, :writtenAt, :hand)
                        """)
                .bindMethods(invoice)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    private static void insert(Handle handle, InvoiceLine line) {
        handle.createUpdate("""
                INSERT INTO invoice_line (invoice_id, position, treatment_id, title, minutes, net_minor, tax_permille)
                VALUES (:invoiceId, :position, :treatmentId, :title, :minutes, :netMinor, :taxPermille)
                """).bindMethods(line).execute();
    }
}
