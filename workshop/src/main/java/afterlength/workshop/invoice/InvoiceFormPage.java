package afterlength.workshop.invoice;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

/** A bill being made, over those that were made before. */
record InvoiceFormPage(Frame frame, BillingCase billing, Typed typed, InvoiceSumPart sum) {}
