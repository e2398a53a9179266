package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Tax;

/** The lines of one rate together: their sum before tax, and the tax on it. */
record TaxPart(Tax rate, Money net, Money tax) {}
