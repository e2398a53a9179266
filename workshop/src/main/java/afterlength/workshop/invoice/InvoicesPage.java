package afterlength.workshop.invoice;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** All bills of the shop, and the rules they are made by. */
record InvoicesPage(Frame frame, List<Invoice> invoices, Typed typed) {}
