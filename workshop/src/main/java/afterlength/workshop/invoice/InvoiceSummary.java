package afterlength.workshop.invoice;

import afterlength.workshop.instrument.Visit;
import java.util.List;

record InvoiceSummary(Visit visit, List<Billed> bills) {}
