package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Basis;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.TracedMark;
import afterlength.workshop.examination.TracedMarks;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** The set-up bench: what is typed is drawn at once; saving keeps it and makes the sheet. */
public final class SetupPages implements Room {
    private final Frames frames;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final SetupStore setups;
    private final SetupStart start;
    private final BridgeSheets sheets;
    private final TracedMarks traced;
    private final Clock clock;

    public SetupPages(
            Frames frames,
            InstrumentStore instruments,
            VisitStore visits,
            SetupStore setups,
            SetupStart start,
            BridgeSheets sheets,
            TracedMarks traced,
            Clock clock) {
        this.frames = frames;
        this.instruments = instruments;
        this.visits = visits;
        this.setups = setups;
        this.start = start;
        this.sheets = sheets;
        this.traced = traced;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/setup", this::openBench);
        routes.post("/visits/{visit}/setup", this::save);
        routes.post("/visits/{visit}/setup/drawing", this::draw);
        routes.post("/visits/{visit}/setup/look", this::look);
        routes.get("/visits/{visit}/bridge-sheet.pdf", this::sheet);
    }

    private void openBench(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        SetupMoment moment = moment(String.valueOf(context.queryParam("moment")));
        Typed typed = start.typed(visit, moment);
        show(context, visit, moment, typed, LiveBench.atFirst(typed, moment, other(visit, moment)));
    }

    /** The parts of the page that follow the fingers; problems stand in them too. */
    private void draw(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        SetupMoment moment = moment(typed.raw("moment"));
        boolean resting = !typed.raw("moving").equals("yes");
        Templates.show(context, LiveBench.of(typed, moment, other(visit, moment), resting));
    }

    /** The whole page again with what was typed, nothing saved: for browsers without scripts, and for what changes the form itself. */
    private void look(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = SetupTake.from(Typed.from(context), crowns(visit));
        SetupMoment moment = moment(typed.raw("moment"));
        show(context, visit, moment, typed, LiveBench.atFirst(typed, moment, other(visit, moment)));
    }

    private List<TracedMark> crowns(Visit visit) {
        return traced.list(visit.id()).stream().filter(TracedMark::isCrown).toList();
    }

    private Optional<Setup> other(Visit visit, SetupMoment moment) {
        return setups.findNow(visit.id(), moment == SetupMoment.AFTER ? SetupMoment.BEFORE : SetupMoment.AFTER);
    }

    private synchronized void save(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        SetupMoment moment = moment(typed.raw("moment"));
        SetupBench bench = SetupForm.read(typed);
        String hand = typed.required("hand", "Whose hands", 60);
        BridgeAnswer answer = SetupForm.solve(typed, bench.inputs());
        typed.note(new BenchPost(bench.readings()).problems());
        Basis.check(typed, start.stored(visit, moment));
        if (typed.sound() && answer instanceof BridgeShape) {
            Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
            setups.save(new Setup(0, visit.id(), moment, bench, now, hand));
            context.redirect("/visits/" + visit.id() + "/setup?moment=" + moment + "&saved=yes");
        } else {
            show(context, visit, moment, typed, LiveBench.of(typed, moment, other(visit, moment), true));
        }
    }

    private void show(Context context, Visit visit, SetupMoment moment, Typed typed, LiveBench live) {
        Instrument instrument = instruments.get(visit.instrumentId());
        Frame frame =
                frames.of("The bridge, " + moment.words()).back("/instruments/" + instrument.id(), instrument.name());
        boolean saved = setups.findNow(visit.id(), moment).isPresent();
        Addresses.status(context, typed);
        Templates.show(
                context,
                new SetupPage(
                        frame, visit, moment, typed, live, crowns(visit), saved, context.queryParam("saved") != null));
    }

    private void sheet(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        SetupMoment moment = moment(String.valueOf(context.queryParam("moment")));
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"bridge-" + visit.number() + ".pdf\"")
                .result(sheets.get(visit, moment));
    }

    private static SetupMoment moment(String text) {
        return text.equals(SetupMoment.BEFORE.name()) ? SetupMoment.BEFORE : SetupMoment.AFTER;
    }
}
