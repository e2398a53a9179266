package afterlength.start.demo;

import afterlength.workshop.advice.Decision;
import afterlength.workshop.closing.Tick;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.invoice.InvoiceRules;
import afterlength.workshop.invoice.Rounding;
import java.time.Instant;
import java.time.LocalDate;

/** What the viola's papers end with: a decision with its reason, what was recorded before it was covered, and the bill. */
final class ViolaPapers {
    private ViolaPapers() {}

    static void finish(DemoStores stores, Visit visit, LocalDate home, String hand) {
        Instant now = stores.clock().instant();
        stores.findings().listNow(visit.id()).stream()
                .filter(finding -> finding.kind().contains("crack"))
                .findFirst()
                .ifPresent(crack -> stores.decisions().decide(closed(visit, crack, hand, now)));
        stores.ticks()
                .add(new Tick(
                        0,
                        visit.id(),
                        "crack-open",
                        "Picture: the crack open and clean, before glue",
                        true,
                        "detail, before work",
                        hand,
                        now));
        stores.invoiceRules()
                .put(new InvoiceRules(
                        Rounding.PER_TOTAL, "INVENTED 00/000", "By transfer within 14 days of the date above.", ""));
        stores.billing().findOffered(visit.id(), home, hand).ifPresent(stores.invoices()::issue);
    }

    private static Decision closed(Visit visit, Finding crack, String hand, Instant now) {
        return new Decision(
                0,
                visit.id(),
                crack.id(),
                null,
                "crack-outside",
                "Close the crack from outside",
                "It closes dry by hand, the edges are level, and nothing lies under it; the body stays closed.",
                hand,
                now);
    }
}
