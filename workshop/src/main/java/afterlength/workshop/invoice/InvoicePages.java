package afterlength.workshop.invoice;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/** Making a bill, looking at it, taking it back, and the shop's rules for bills. */
public final class InvoicePages implements Room {
    private final Frames frames;
    private final BillingCases cases;
    private final InvoiceStore invoices;
    private final InvoiceRulesStore rules;
    private final InvoicePapers papers;
    private final Clock clock;

    public InvoicePages(
            Frames frames,
            BillingCases cases,
            InvoiceStore invoices,
            InvoiceRulesStore rules,
            InvoicePapers papers,
            Clock clock) {
        this.frames = frames;
        this.cases = cases;
        this.invoices = invoices;
        this.rules = rules;
        this.papers = papers;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/invoice", this::openForm);
        routes.post("/visits/{visit}/invoice", this::issue);
        routes.post("/visits/{visit}/invoice/sum", this::sum);
        routes.get("/invoices/{invoice}", context -> show(context, invoice(context), Typed.empty()));
        routes.get("/invoices/{invoice}/paper.pdf", this::paper);
        routes.post("/invoices/{invoice}/credit", this::credit);
        routes.get("/shelf/invoices", context -> showRules(context, InvoiceRulesForm.typedOf(rules.get())));
        routes.post("/shelf/invoices", this::changeRules);
    }

    private void openForm(Context context) {
        BillingCase it = asked(context);
        showForm(context, it, InvoiceForm.offered(it, today()));
    }

    private void issue(Context context) {
        BillingCase it = asked(context);
        Typed typed = Typed.from(context);
        if (typed.raw("do").equals("reckon")) {
            showForm(context, it, typed);
            return;
        }
        Optional<InvoiceDraft> draft = InvoiceForm.read(typed, it, today());
        noteClockBehind(typed, "supplied_on");
        if (typed.sound() && draft.isPresent()) {
            context.redirect("/invoices/" + invoices.issue(draft.get()).id());
        } else {
            showForm(context, it, typed);
        }
    }

    /** Numbers and days of bills run together; a machine whose clock went back would part them. */
    private void noteClockBehind(Typed typed, String field) {
        invoices.findLatestDay().filter(latest -> latest.isAfter(today())).ifPresent(latest -> {
            typed.note(
                    field,
                    "This machine says that today is " + today() + ", but a bill was issued on " + latest
                            + "; set its clock right before the next one gets a number.");
        });
    }

    private void sum(Context context) {
        BillingCase it = asked(context);
        Templates.show(context, sumPart(Typed.from(context), it));
    }

    private InvoiceSumPart sumPart(Typed typed, BillingCase it) {
        return new InvoiceSumPart(
                InvoiceForm.sum(typed, it, today()),
                it.settings().currency(),
                it.rules().rounding());
    }

    private void showForm(Context context, BillingCase it, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new InvoiceFormPage(
                        frames.of("Bill")
                                .back(
                                        "/instruments/" + it.instrument().id(),
                                        it.instrument().name()),
                        it,
                        typed,
                        sumPart(typed.again(), it)));
    }

    private void credit(Context context) {
        Invoice bill = invoice(context);
        Typed typed = Typed.from(context);
        String reason = typed.required("reason", "The reason", 1000);
        String hand = typed.required("hand", "Who takes it back", 80);
        noteClockBehind(typed, "reason");
        if (bill.isCredit()) {
            typed.note("reason", bill.title() + " takes a bill back and cannot be taken back itself; make a new bill.");
        }
        if (typed.sound()) {
            context.redirect(
                    "/invoices/" + invoices.credit(bill.id(), reason, hand).id());
        } else {
            show(context, bill, typed);
        }
    }

    private void show(Context context, Invoice invoice, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new InvoicePage(
                        frames.of(invoice.title()).back("/shelf/invoices", "Bills"), invoices.billed(invoice), typed));
    }

    private void paper(Context context) {
        Invoice invoice = invoice(context);
        context.contentType("application/pdf")
                .header(
                        "Content-Disposition",
                        "inline; filename=\"" + (invoice.isCredit() ? "credit-note-" : "invoice-") + invoice.number()
                                + ".pdf\"")
                .result(papers.pdf(invoice));
    }

    private void showRules(Context context, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context, new InvoicesPage(frames.of("Bills").back("/shelf", "The shelf"), invoices.list(), typed));
    }

    private void changeRules(Context context) {
        Typed typed = Typed.from(context);
        InvoiceRules after = InvoiceRulesForm.read(typed, rules.get());
        if (typed.sound()) {
            rules.put(after);
            context.redirect("/shelf/invoices");
        } else {
            showRules(context, typed);
        }
    }

    private BillingCase asked(Context context) {
        return cases.of(Addresses.id(context, "visit"));
    }

    private Invoice invoice(Context context) {
        return invoices.get(Addresses.id(context, "invoice"));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
