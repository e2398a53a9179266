package afterlength.workshop.invoice;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What bills tell on the instrument's page. */
public final class InvoiceChapter implements Chapter {
    private final InvoiceStore invoices;

    public InvoiceChapter(InvoiceStore invoices) {
        this.invoices = invoices;
    }

    @Override
    public String name() {
        return "Bill";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new InvoiceSummary(
                visit,
                invoices.listOf(visit.id()).stream().map(invoices::billed).toList()));
    }
}
