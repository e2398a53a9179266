package afterlength.workshop.invoice;

import static afterlength.workshop.invoice.BilledShop.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.craft.units.Money;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InvoiceStoreTest {
    @TempDir
    Path folder;

    private BilledShop shop;

    @BeforeEach
    void open() {
        shop = new BilledShop(folder);
    }

    private Invoice issue() {
        return shop.invoices.issue(
                shop.draft(Rounding.PER_TOTAL, line("Seam", 10_050, 190), line("Strings", 4_000, 70)));
    }

    @Test
    void aBillKeepsItsFiguresAndItsLines() {
        Invoice bill = issue();
        assertThat(bill.number()).isEqualTo("2026-0001");
        assertThat(bill.netMinor()).isEqualTo(new Money(14_050));
        // 19 % of 100.50 is 19.095, rounded to 19.10; 7 % of 40.00 is 2.80
        assertThat(bill.taxMinor()).isEqualTo(new Money(2_190));
        assertThat(bill.totalMinor()).isEqualTo(new Money(16_240));
        assertThat(shop.invoices.listLines(bill.id()))
                .extracting(InvoiceLine::position, InvoiceLine::title)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(1, "Seam"),
                        org.assertj.core.groups.Tuple.tuple(2, "Strings"));
        assertThat(shop.invoices.billed(bill).sum().total()).isEqualTo(bill.totalMinor());
    }

    @Test
    void numbersRunOnThroughBillsAndCreditNotesAndBeginAnewEachYear() {
        Invoice first = issue();
        shop.invoices.credit(first.id(), "wrong name", "Ines");
        issue();
        InvoiceStore nextYear =
                new InvoiceStore(shop.ledger, Clock.fixed(Instant.parse("2027-01-02T09:00:00Z"), ZoneOffset.UTC));
        nextYear.issue(shop.draft(Rounding.PER_LINE, line("Peg", 900, 190)));
        assertThat(shop.invoices.list())
                .extracting(Invoice::title)
                .containsExactly(
                        "Invoice 2027-0001", "Invoice 2026-0003", "Credit note 2026-0002", "Invoice 2026-0001");
    }

    @Test
    void aBillThatFailsTakesNoNumber() {
        issue();
        InvoiceDraft broken = shop.draft(
                Rounding.PER_TOTAL, new InvoiceLine(0, 0, 99_999L, "no such treatment", null, new Money(1), 0));
        assertThatThrownBy(() -> shop.invoices.issue(broken)).hasMessageContaining("FOREIGN KEY");
        assertThat(issue().number()).isEqualTo("2026-0002");
    }

    @Test
    void theDatabaseItselfRefusesAGap() {
        issue();
        assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("""
                        INSERT INTO invoice (visit_id, year, serial, issued_on, supplied_on, seller, seller_tax_id, buyer, subject,
                          currency, rounding, net_minor, tax_minor, total_minor, paid_minor, terms, no_tax_reason, remark,
                          written_at, hand)
                        VALUES (1, 2026, 3, '2026-11-04', '2026-11-04', '', '', '', '', 'EUR', 'PER_LINE', 0, 0, 0, 0, '', '', '',
                          '2026-11-04T10:00:00Z', 'h')
                        """)))
                .hasMessageContaining("invoice numbers have no gap");
    }

    @Test
    void manyHandsAtOnceLeaveNoGapAndNoDouble() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(6);
        List<Future<Invoice>> issued =
                IntStream.range(0, 30).mapToObj(n -> hands.submit(this::issue)).toList();
        for (Future<Invoice> one : issued) {
            one.get();
        }
        hands.shutdown();
        assertThat(shop.invoices.list().stream().map(Invoice::serial).sorted().toList())
                .isEqualTo(IntStream.rangeClosed(1, 30).boxed().toList());
    }

    @Test
    void aCreditNoteTakesBackEveryCentAndIsWrittenOnce() {
        Invoice bill = issue();
        Invoice note = shop.invoices.credit(bill.id(), "wrong name", "Ines");
        assertThat(note.totalMinor().plus(bill.totalMinor())).isEqualTo(Money.NOTHING);
        assertThat(note.taxMinor().plus(bill.taxMinor())).isEqualTo(Money.NOTHING);
        assertThat(shop.invoices.listLines(note.id()))
                .extracting(InvoiceLine::netMinor)
                .containsExactly(new Money(-10_050), new Money(-4_000));
        assertThat(shop.invoices.credit(bill.id(), "again", "Ines")).isEqualTo(note);
        assertThat(shop.invoices.billed(bill).standing()).isFalse();
        assertThatThrownBy(() -> shop.invoices.credit(note.id(), "no", "Ines"))
                .hasMessage("Credit note 2026-0002 takes a bill back and cannot be taken back itself");
    }
}
