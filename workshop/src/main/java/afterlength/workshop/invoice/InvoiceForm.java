package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.Tax;
import afterlength.workshop.desk.MoneyText;
import afterlength.workshop.desk.Typed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a bill from what was typed, and fills a fresh form from agreement and diary. */
final class InvoiceForm {
    /** Lines beside the agreement that the form has room for. */
    static final List<String> OWN = List.of("own1", "own2", "own3");

    private final Typed typed;
    private final BillingCase it;
    private final LocalDate today;

    private InvoiceForm(Typed typed, BillingCase it, LocalDate today) {
        this.typed = typed;
        this.it = it;
        this.today = today;
    }

    /** The form as agreement and diary fill it. */
    static Typed offered(BillingCase it, LocalDate today) {
        Map<String, List<String>> typed = new HashMap<>();
        String rate = new Tax(it.settings().taxPermille()).typed();
        it.offered().forEach(line -> {
            typed.put("title_" + line.key(), List.of(line.agreed().title()));
            typed.put("net_" + line.key(), List.of(MoneyText.typed(line.offered())));
            typed.put("tax_" + line.key(), List.of(rate));
        });
        OWN.forEach(key -> typed.put("tax_" + key, List.of(rate)));
        typed.put(
                "line",
                it.offered().stream()
                        .filter(OfferedLine::proposed)
                        .map(OfferedLine::key)
                        .toList());
        typed.put("supplied_on", List.of(today.toString()));
        typed.put("buyer", List.of(it.buyer()));
        typed.put("terms", List.of(it.rules().terms()));
        typed.put("hand", List.of(it.settings().usualHand()));
        return Typed.knownAll(typed);
    }

    /** The offered lines as a bill, for a shop that takes them as they are. */
    static InvoiceDraft draft(BillingCase it, LocalDate suppliedOn, String hand) {
        Typed typed = offered(it, suppliedOn);
        InvoiceForm form = new InvoiceForm(typed, it, suppliedOn);
        return form.draft(form.lines(), suppliedOn, hand);
    }

    /** What the ticked lines come to, as far as they can be read; notes problems on the typed form it was given. */
    static InvoiceSum sum(Typed typed, BillingCase it, LocalDate today) {
        return InvoiceSum.of(
                new InvoiceForm(typed, it, today).lines(), it.rules().rounding());
    }

    /** Empty when a problem was noted. */
    static Optional<InvoiceDraft> read(Typed typed, BillingCase it, LocalDate today) {
        InvoiceForm form = new InvoiceForm(typed, it, today);
        List<InvoiceLine> lines = form.lines();
        if (lines.isEmpty() && typed.sound()) {
            typed.note("line", "No line is ticked or written, so there is nothing to bill. Tick one or write one.");
        }
        LocalDate supplied = form.suppliedOn();
        InvoiceSum sum = InvoiceSum.of(lines, it.rules().rounding());
        form.checkAgreed(sum);
        InvoiceDraft draft =
                lines.isEmpty() ? null : form.draft(lines, supplied, typed.required("hand", "Who bills", 80));
        form.checkPaid(sum);
        return typed.sound() ? Optional.ofNullable(draft) : Optional.empty();
    }

    private InvoiceDraft draft(List<InvoiceLine> lines, LocalDate suppliedOn, String hand) {
        Agreement agreement = it.agreement();
        Money paid = MoneyText.read(typed, "paid", "What was paid before");
        return new InvoiceDraft(
                it.visit().id(),
                agreement == null ? null : agreement.id(),
                suppliedOn,
                it.seller(),
                it.rules().taxId(),
                typed.required("buyer", "Who is billed", 400),
                it.subject(),
                it.settings().currency(),
                it.rules().rounding(),
                lines,
                paid == null ? Money.NOTHING : paid,
                typed.text("terms", "How to pay", 600),
                lines.stream().anyMatch(line -> line.taxPermille() == 0)
                        ? it.rules().noTaxReason()
                        : "",
                typed.text("remark", "The remark", 2000),
                hand);
    }

    private List<InvoiceLine> lines() {
        List<InvoiceLine> lines = new ArrayList<>();
        it.offered().stream()
                .filter(line -> typed.ticked("line", line.key()))
                .forEach(line -> line(line.key(), line.agreed().treatmentId(), line.minutes())
                        .ifPresent(lines::add));
        OWN.stream()
                .filter(key -> !typed.raw("title_" + key).isBlank()
                        || !typed.raw("net_" + key).isBlank())
                .forEach(key -> line(key, null, 0).ifPresent(lines::add));
        return lines;
    }

    private Optional<InvoiceLine> line(String key, @Nullable Long treatment, int minutes) {
        String title = typed.required("title_" + key, "The line", 200);
        Money net = MoneyText.read(typed, "net_" + key, "The amount");
        Tax rate = Tax.read(typed, "tax_" + key, "The tax");
        if (net == null && typed.problem("net_" + key).isEmpty()) {
            typed.note("net_" + key, "The amount is missing; write it before tax, such as 1200 or 1200,50.");
        }
        return net == null
                ? Optional.empty()
                : Optional.of(
                        new InvoiceLine(0, 0, treatment, title, minutes == 0 ? null : minutes, net, rate.permille()));
    }

    private LocalDate suppliedOn() {
        LocalDate day = typed.date("supplied_on", "The day of the work");
        if (day == null) {
            if (typed.problem("supplied_on").isEmpty()) {
                typed.note(
                        "supplied_on", "The day of the work is missing. Write year-month-day, such as " + today + ".");
            }
            return today;
        }
        LocalDate received = it.visit().receivedOn();
        if (day.isBefore(received) || day.isAfter(today)) {
            typed.note(
                    "supplied_on",
                    "The day of the work is " + day + "; allowed is from the receipt on " + received + " to today, "
                            + today + ".");
        }
        return day;
    }

    /** A ceiling is never passed; without one, what lies above the agreed range needs the owner's word in the remark. */
    private void checkAgreed(InvoiceSum sum) {
        Agreement agreement = it.agreement();
        if (agreement == null) {
            return;
        }
        Money all = it.billedSoFar().plus(sum.total());
        Money ceiling = agreement.ceilingMinor();
        if (ceiling != null && all.minor() > ceiling.minor()) {
            typed.note(
                    "line",
                    comesTo(all) + "; the owner agreed to no more than " + MoneyText.typed(ceiling)
                            + ". Lower or untick a line, or agree anew with the owner first.");
        }
        boolean above = ceiling == null && all.minor() > agreement.highMinor().minor();
        if (above && typed.raw("remark").isBlank()) {
            typed.note(
                    "remark",
                    comesTo(all) + ", above the agreed range up to " + MoneyText.typed(agreement.highMinor())
                            + ". Write here when and how the owner agreed to it, or lower a line.");
        }
    }

    private String comesTo(Money all) {
        boolean first = it.billedSoFar().equals(Money.NOTHING);
        return "With tax" + (first ? "" : " and what was billed before") + " this comes to " + MoneyText.typed(all);
    }

    private void checkPaid(InvoiceSum sum) {
        Money paid = typed.problem("paid").isEmpty() ? MoneyText.read(typed, "paid", "What was paid before") : null;
        if (paid != null && paid.minor() > sum.total().minor()) {
            typed.note(
                    "paid",
                    "What was paid before is " + MoneyText.typed(paid) + ", more than the total of "
                            + MoneyText.typed(sum.total()) + "; correct it, or bill the rest of what it was for.");
        }
    }
}
