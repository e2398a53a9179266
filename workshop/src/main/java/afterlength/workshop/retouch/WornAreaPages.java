package afterlength.workshop.retouch;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;

/** How many coats, and how much varnish, a worn area of a visit takes. */
public final class WornAreaPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final FindingStore findings;
    private final VarnishStore book;
    private final WornAreaStore areas;
    private final DryingAir air;
    private final Clock clock;

    public WornAreaPages(
            Frames frames,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            FindingStore findings,
            VarnishStore book,
            WornAreaStore areas,
            DryingAir air,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.instruments = instruments;
        this.visits = visits;
        this.findings = findings;
        this.book = book;
        this.areas = areas;
        this.air = air;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/worn-areas", context -> show(context, visit(context), fresh()));
        routes.post("/visits/{visit}/worn-areas", this::add);
        routes.post("/visits/{visit}/worn-areas/{area}/withdraw", this::withdraw);
    }

    private void add(Context context) {
        Visit visit = visit(context);
        Typed typed = Typed.from(context);
        WornArea area = WornAreaForm.read(typed, visit.id(), findings.listNow(visit.id()), usable(), now());
        if (area == null) {
            show(context, visit, typed);
        } else {
            areas.add(area);
            context.redirect("/visits/" + visit.id() + "/worn-areas");
        }
    }

    private void withdraw(Context context) {
        Visit visit = visit(context);
        long id = Addresses.id(context, "area");
        WornArea held = areas.listNow(visit.id()).stream()
                .filter(area -> area.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotHere("worn area", id));
        areas.add(held.withdrawnAt(now()));
        context.redirect("/visits/" + visit.id() + "/worn-areas");
    }

    private void show(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        Instrument instrument = instruments.get(visit.instrumentId());
        Frame frame = frames.of("Varnish for worn places").back("/instruments/" + instrument.id(), instrument.name());
        List<WornAreaPage.WornLine> lines =
                areas.listNow(visit.id()).stream().map(this::line).toList();
        List<Finding> seen = findings.listNow(visit.id());
        Templates.show(context, new WornAreaPage(frame, visit.id(), lines, seen, usable(), typed));
    }

    private WornAreaPage.WornLine line(WornArea area) {
        String finding = findings.findNow(area.findingId()).map(Finding::title).orElse("a finding that was withdrawn");
        return new WornAreaPage.WornLine(area, finding, VarnishEntry.of(book, book.get(area.varnishId()), air, now()));
    }

    private List<Varnish> usable() {
        return book.list().stream().filter(one -> !one.putAway()).toList();
    }

    private Typed fresh() {
        return Typed.known(Map.of("hand", settings.get().usualHand()));
    }

    private Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
