package afterlength.workshop.agreement;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** A proposal at work, the owner's choice, and the proposal on paper. */
public final class AgreementPages implements Room {
    private final VisitFrames frames;
    private final Proposals proposals;
    private final TreatmentStore treatments;
    private final AgreementStore agreements;
    private final Clock clock;

    public AgreementPages(
            Frames frames, Proposals proposals, TreatmentStore treatments, AgreementStore agreements, Clock clock) {
        this.frames = new VisitFrames(frames);
        this.proposals = proposals;
        this.treatments = treatments;
        this.agreements = agreements;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/agreement", this::workbench);
        routes.get("/visits/{visit}/agree", this::openAgree);
        routes.post("/visits/{visit}/agree", this::agree);
        routes.post("/visits/{visit}/agree/sum", this::sum);
        routes.get("/visits/{visit}/proposal.pdf", this::paper);
    }

    private void workbench(Context context) {
        Proposal proposal = asked(context);
        List<Treatment> putAway = treatments.listPutAway(proposal.visit().id());
        Treatment just = putAway.stream()
                .filter(treatment -> Long.toString(treatment.id()).equals(context.queryParam("away")))
                .findFirst()
                .orElse(null);
        Templates.show(context, new WorkbenchPage(frames.workbench(proposal), proposal, putAway, just));
    }

    private void openAgree(Context context) {
        Proposal proposal = asked(context);
        List<ScopeOffer> offers = proposal.offers().list();
        ScopeOffer chosen = offers.stream()
                .filter(offer -> offer.scope().name().equals(context.queryParam("scope")))
                .findFirst()
                .orElse(offers.get(0));
        showAgree(context, proposal, Typed.knownAll(ConsentForm.offered(proposal, chosen, today())));
    }

    private void agree(Context context) {
        Proposal proposal = asked(context);
        Typed typed = Typed.from(context);
        if (typed.raw("do").equals("reckon")) {
            showAgree(context, proposal, typed);
            return;
        }
        Consent consent = ConsentForm.read(typed, proposal, today());
        if (typed.sound()) {
            agreements.agree(consent);
            context.redirect(VisitFrames.workbench(proposal.visit().id()));
        } else {
            showAgree(context, proposal, typed);
        }
    }

    private void sum(Context context) {
        Templates.show(context, AgreeSum.of(Typed.from(context), asked(context)));
    }

    private void showAgree(Context context, Proposal proposal, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new AgreePage(
                        frames.inside(proposal.visit().id(), "What the owner chose"),
                        proposal,
                        typed,
                        AgreeSum.of(typed, proposal)));
    }

    private void paper(Context context) {
        Proposal proposal = asked(context);
        context.contentType("application/pdf")
                .header(
                        "Content-Disposition",
                        "inline; filename=\"proposal-" + proposal.visit().number() + ".pdf\"")
                .result(ProposalPaper.pdf(proposal, today()));
    }

    private Proposal asked(Context context) {
        return proposals.of(Addresses.id(context, "visit"));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
