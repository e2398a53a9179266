package afterlength.workshop.handover;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;

/** The check after a year, on the page and on paper: the same measures again beside those of the handover. */
public final class CheckPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final HandoverStore handovers;
    private final MeasureStore measures;
    private final Clock clock;

    public CheckPages(
            Frames frames,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            HandoverStore handovers,
            MeasureStore measures,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.instruments = instruments;
        this.visits = visits;
        this.handovers = handovers;
        this.measures = measures;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/visits/{visit}/check",
                context -> show(
                        context,
                        check(context),
                        Typed.known(Map.of("hand", settings.get().usualHand()))));
        routes.post("/visits/{visit}/check", this::save);
        routes.get("/visits/{visit}/check.pdf", this::print);
    }

    private YearCheck check(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        return YearCheck.find(visit, visits, handovers, measures)
                .orElseThrow(() -> new NotHere("earlier handover to check against for visit", visit.number()));
    }

    private void save(Context context) {
        YearCheck check = check(context);
        Typed typed = Typed.from(context);
        List<Measure> read = CheckForm.read(typed, check, clock.instant().truncatedTo(ChronoUnit.SECONDS));
        read.forEach(measures::add);
        if (typed.sound()) {
            context.redirect("/visits/" + check.visit().id() + "/check");
        } else {
            show(context, check, typed);
        }
    }

    private void show(Context context, YearCheck check, Typed typed) {
        Addresses.status(context, typed);
        Instrument instrument = instruments.get(check.visit().instrumentId());
        Templates.show(
                context,
                new CheckPage(
                        frames.of("Check after the handover")
                                .back("/instruments/" + instrument.id(), instrument.name()),
                        check,
                        typed));
    }

    private void print(Context context) {
        YearCheck check = check(context);
        Settings shop = settings.get();
        Instrument instrument = instruments.get(check.visit().instrumentId());
        byte[] pdf = PaperPdf.of(new PaperDocument(
                "Check after the handover",
                "en",
                shop.letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(
                        instrument.name() + ", visit " + check.visit().number(), Days.words(LocalDate.now(clock))),
                Templates.text(new CheckPaper(shop, check)),
                Map.of()));
        context.contentType("application/pdf")
                .header(
                        "Content-Disposition",
                        "inline; filename=\"check-" + check.visit().number() + ".pdf\"")
                .result(pdf);
    }
}
