package afterlength.workshop.handover;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;

/** Giving an instrument back, and the papers that go with it. */
public final class HandoverPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final HandoverStore handovers;
    private final FinalReports reports;
    private final Clock clock;

    public HandoverPages(
            Frames frames,
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            VisitStore visits,
            HandoverStore handovers,
            FinalReports reports,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.handovers = handovers;
        this.reports = reports;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/handover", this::openPage);
        routes.post("/visits/{visit}/handover", this::save);
        routes.get("/visits/{visit}/final-report.pdf", this::print);
    }

    private void openPage(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        show(
                context,
                visit,
                handovers
                        .findNow(visit.id())
                        .map(HandoverForm::typedOf)
                        .map(stored -> Typed.known(Basis.with(stored, stored)))
                        .orElseGet(() -> offered(visit)));
    }

    private Typed offered(Visit visit) {
        LocalDate today = LocalDate.now(clock);
        Instrument instrument = instruments.get(visit.instrumentId());
        Map<String, String> start = Map.of(
                "handed_over_on", today.toString(),
                "received_by", owners.get(instrument.ownerId()).name(),
                "care", CareAdvice.OFFERED,
                "next_check_on", today.plusYears(1).toString(),
                "hand", settings.get().usualHand());
        return Typed.known(Basis.with(start, Map.of()));
    }

    private synchronized void save(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        Handover handover = HandoverForm.read(
                typed, visit, LocalDate.now(clock), clock.instant().truncatedTo(ChronoUnit.SECONDS));
        Basis.check(
                typed, handovers.findNow(visit.id()).map(HandoverForm::typedOf).orElse(Map.of()));
        if (typed.sound()) {
            handovers.save(handover);
            context.redirect("/instruments/" + visit.instrumentId());
        } else {
            show(context, visit, typed);
        }
    }

    private void show(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        Instrument instrument = instruments.get(visit.instrumentId());
        Templates.show(
                context,
                new HandoverPage(
                        frames.of("Handover").back("/instruments/" + instrument.id(), instrument.name()),
                        visit,
                        typed,
                        handovers.findNow(visit.id()).isPresent()));
    }

    private void print(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"final-report-" + visit.number() + ".pdf\"")
                .result(reports.pdf(visit));
    }
}
