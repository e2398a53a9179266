package afterlength.workshop.retouch;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.DrawnMark;
import afterlength.workshop.examination.MarkStore;
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

/** How far mended lines of a visit stand out, before and after. */
public final class MendedLinePages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final MarkStore marks;
    private final LineDesk desk;
    private final MendedLineStore lines;
    private final Clock clock;

    public MendedLinePages(
            Frames frames,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            MarkStore marks,
            LineDesk desk,
            MendedLineStore lines,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.instruments = instruments;
        this.visits = visits;
        this.marks = marks;
        this.desk = desk;
        this.lines = lines;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/mended-lines", context -> show(context, visit(context), fresh()));
        routes.post("/visits/{visit}/mended-lines", this::add);
        routes.get("/visits/{visit}/mended-lines/{line}", this::showOne);
        routes.post("/visits/{visit}/mended-lines/{line}/withdraw", this::withdraw);
    }

    private void add(Context context) {
        Visit visit = visit(context);
        Typed typed = Typed.from(context);
        MendedLine line = MendedLineForm.read(typed, visit.id(), drawn(visit), desk, now());
        if (line == null) {
            show(context, visit, typed);
        } else {
            context.redirect(address(visit) + "/" + lines.add(line));
        }
    }

    private void withdraw(Context context) {
        lines.withdraw(one(context).id(), now());
        context.redirect(address(visit(context)));
    }

    private void show(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        Instrument instrument = instruments.get(visit.instrumentId());
        Frame frame = frames.of("Mended lines").back("/instruments/" + instrument.id(), instrument.name());
        List<Choice> choices = drawn(visit).stream().map(this::choice).toList();
        Templates.show(context, new MendedLinesPage(frame, visit.id(), lines.listNow(visit.id()), choices, typed));
    }

    private void showOne(Context context) {
        MendedLine line = one(context);
        Frame frame = frames.of(line.place()).back(address(visit(context)), "Mended lines");
        Templates.show(
                context,
                new MendedLinePage(frame, line, seen("Before", line.before()), seen("Afterwards", line.after())));
    }

    private LineView seen(String moment, LineSight sight) {
        DrawnMark mark = marks.get(sight.markId());
        return new LineView(moment, sight, mark, desk.photograph(mark));
    }

    private Choice choice(DrawnMark mark) {
        return new Choice(
                Long.toString(mark.id()),
                mark.title() + " on " + desk.photograph(mark).title());
    }

    private List<DrawnMark> drawn(Visit visit) {
        return marks.listNow(visit.id()).stream()
                .filter(DrawnMark::isLineOnPhotograph)
                .toList();
    }

    private MendedLine one(Context context) {
        MendedLine line = lines.get(Addresses.id(context, "line"));
        if (line.visitId() != visit(context).id()) {
            throw new NotHere("mended line", line.id());
        }
        return line;
    }

    private Typed fresh() {
        return Typed.known(Map.of("hand", settings.get().usualHand()));
    }

    private Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }

    private static String address(Visit visit) {
        return "/visits/" + visit.id() + "/mended-lines";
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
