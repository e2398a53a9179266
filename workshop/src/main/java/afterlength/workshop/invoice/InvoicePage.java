package afterlength.workshop.invoice;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** A bill or credit note as it was issued; a bill that stands can be taken back here. */
record InvoicePage(Frame frame, Billed billed, Typed typed) {
    String address() {
        return "/invoices/" + billed.invoice().id();
    }
}
