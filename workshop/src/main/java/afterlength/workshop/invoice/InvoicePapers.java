package afterlength.workshop.invoice;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import java.util.Map;

/** Sets bills and credit notes on the paper of the shop. */
public final class InvoicePapers {
    private final InvoiceStore invoices;
    private final SettingsStore settings;

    public InvoicePapers(InvoiceStore invoices, SettingsStore settings) {
        this.invoices = invoices;
        this.settings = settings;
    }

    public byte[] pdf(Invoice invoice) {
        Settings shop = settings.get();
        return PaperPdf.of(new PaperDocument(
                invoice.title(),
                "en",
                shop.letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(invoice.subject(), Days.words(invoice.issuedOn())),
                Templates.text(new InvoicePaper(invoices.billed(invoice), shop.demonstration())),
                Map.of()));
    }
}
