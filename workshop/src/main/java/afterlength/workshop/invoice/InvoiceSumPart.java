package afterlength.workshop.invoice;

/** What the ticked lines come to; shown anew while the person changes them. */
record InvoiceSumPart(InvoiceSum sum, String currency, Rounding rounding) {}
