package afterlength.workshop.invoice;

import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.MoneyText;
import java.util.Arrays;
import java.util.List;

/** The sentences of bills, the same on page and paper. */
final class InvoiceWords {
    static final List<Choice> ROUNDINGS = Arrays.stream(Rounding.values())
            .map(rounding -> new Choice(rounding.name(), rounding.words()))
            .toList();

    private InvoiceWords() {}

    /** What a line was agreed at and what the diary counted. */
    static String about(OfferedLine line, String currency) {
        String agreed = "Agreed at "
                + Figures.range(
                        MoneyText.words(line.agreed().lowMinor(), currency),
                        MoneyText.typed(line.agreed().highMinor()))
                + " before tax, expected " + MoneyText.typed(line.agreed().expectedMinor()) + ". ";
        return agreed + counted(line, currency) + billed(line);
    }

    private static String counted(OfferedLine line, String currency) {
        if (line.byTime() == null) {
            return line.done()
                    ? "No minutes are counted in the diary; the expected price is offered."
                    : "The diary tells of nothing done.";
        }
        String time = "The diary counts " + Figures.duration(line.minutes()) + ", with materials "
                + MoneyText.words(line.byTime(), currency);
        return line.cappedByRange() ? time + "; the upper end of the agreed range is offered." : time + ".";
    }

    private static String billed(OfferedLine line) {
        return line.billedIn() == null ? "" : " It stands in " + line.billedIn().title() + " already.";
    }

    static String agreed(Agreement agreement, String currency) {
        return "Agreed on " + Days.words(agreement.agreedOn()) + ": up to "
                + MoneyText.words(agreement.highMinor(), currency) + " with tax"
                + (agreement.ceilingMinor() == null
                        ? ""
                        : ", not beyond " + MoneyText.words(agreement.ceilingMinor(), currency)
                                + " without the owner’s word")
                + "; an hour at " + MoneyText.words(agreement.perHourMinor(), currency) + " before tax.";
    }

    static String beside(int minutes) {
        return Figures.duration(minutes)
                + " in the diary belong to no agreed line and are not offered; work beside the agreement needs the owner’s word.";
    }

    /** "EUR 119.00 in all: EUR 100.00 before tax, EUR 19.00 tax." */
    static String sum(InvoiceSum sum, String currency) {
        return MoneyText.words(sum.total(), currency) + " in all: " + MoneyText.words(sum.net(), currency)
                + " before tax, " + MoneyText.words(sum.tax(), currency) + " tax";
    }

    /** One bill in a list. */
    static String listed(Invoice invoice) {
        return invoice.title() + ", " + Days.words(invoice.issuedOn()) + ", "
                + MoneyText.words(invoice.totalMinor(), invoice.currency()) + " with tax";
    }

    static String counterpart(Billed billed) {
        Invoice other = billed.counterpart();
        if (other == null) {
            return "";
        }
        return billed.invoice().isCredit()
                ? "It takes back " + other.title() + " of " + Days.words(other.issuedOn()) + " as a whole."
                : "It was taken back as a whole by " + other.title() + " on " + Days.words(other.issuedOn()) + ".";
    }

    /** What is to be paid, or given back. */
    static String due(Invoice invoice) {
        if (invoice.isCredit()) {
            return "What was paid on it is given back or set against another bill.";
        }
        String due = MoneyText.words(invoice.dueMinor(), invoice.currency());
        return invoice.paidMinor().minor() == 0
                ? "To pay: " + due + "."
                : "To pay: " + due + ", after " + MoneyText.words(invoice.paidMinor(), invoice.currency())
                        + " paid before.";
    }

    /** What a bill usually has to name and this one cannot ({@code docs/sources.md#invoice-contents}). */
    static List<String> missing(BillingCase it) {
        return java.util.stream.Stream.of(
                        it.settings().address().isBlank() ? "the address of the shop" : "",
                        it.rules().taxId().isBlank() ? "the shop’s tax number" : "",
                        it.owner().address().isBlank() ? "the address of who is billed" : "",
                        it.settings().taxPermille() == 0
                                        && it.rules().noTaxReason().isBlank()
                                ? "why no tax is added"
                                : "")
                .filter(words -> !words.isEmpty())
                .toList();
    }
}
