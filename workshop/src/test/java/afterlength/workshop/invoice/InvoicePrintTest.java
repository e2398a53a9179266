package afterlength.workshop.invoice;

import static afterlength.workshop.invoice.BilledShop.line;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The paper says what a bill usually has to say (docs/sources.md#invoice-contents), from what was kept and not from the shop now. */
class InvoicePrintTest {
    @TempDir
    Path folder;

    private BilledShop shop;

    @BeforeEach
    void open() {
        shop = new BilledShop(folder);
    }

    private String words(Invoice invoice) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(shop.papers.pdf(invoice))) {
            return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
    }

    @Test
    void thePaperNamesWhoWhatWhenAndEveryRate() throws IOException {
        Invoice bill = shop.invoices.issue(shop.draft(
                Rounding.PER_TOTAL,
                line("Seam closed", 10_050, 190),
                line("Music, a printed part", 4_000, 70),
                line("Loan", 500, 0)));
        assertThat(words(bill))
                .contains("Invoice 2026-0001", "4 November 2026", "Cello, unlabelled, visit 2026-001")
                .contains("Workshop on the Mill Race 12 Mill Race Tax number TN 4711", "Ilse Tamm 7 Weir Street")
                .contains("Seam closed – 19 % 100.50", "Music, a printed part – 7 % 40.00")
                .contains(
                        "Sum before tax 145.50",
                        "No tax on 5.00 0.00",
                        "7 % tax on 40.00 2.80",
                        "19 % tax on 100.50 19.10")
                .contains("Total, EUR 167.40", "To pay: EUR 167.40.", "Within 14 days.")
                .contains("Tax is reckoned once for each rate, on the sum of its lines, rounded half up to 0.01.")
                .contains("page 1 of 1");
    }

    @Test
    void aCreditNoteNamesItsBillAndTurnsEverySign() throws IOException {
        Invoice bill = shop.invoices.issue(shop.draft(Rounding.PER_LINE, line("Seam closed", 10_050, 190)));
        Invoice note = shop.invoices.credit(bill.id(), "The name was wrong.", "Ines");
        assertThat(words(note))
                .contains("Credit note 2026-0002", "It takes back Invoice 2026-0001 of 4 November 2026 as a whole.")
                .contains("Seam closed – 19 % −100.50", "19 % tax on −100.50 −19.10", "Total, EUR −119.60")
                .contains("The name was wrong.");
    }

    @Test
    void whatTheShopIsCalledLaterDoesNotChangeAnOldBill() throws IOException {
        Invoice bill = shop.invoices.issue(shop.draft(Rounding.PER_LINE, line("Seam closed", 10_050, 190)));
        shop.settings.put(afterlength.workshop.ledger.Settings.FRESH);
        shop.rules.put(new InvoiceRules(Rounding.PER_TOTAL, "other", "other", "other"));
        assertThat(words(bill))
                .contains("Workshop on the Mill Race", "TN 4711", "Tax is reckoned on each line")
                .doesNotContain("Our workshop", "other");
    }
}
