package afterlength.workshop.invoice;

/** A bill on paper: everything from the bill as it was kept, nothing from the shop as it is now. */
record InvoicePaper(Billed billed, boolean demonstration) {}
