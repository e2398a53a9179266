package afterlength.workshop.glue;

import afterlength.craft.glue.Spread;
import afterlength.craft.glue.WorkingWindow;
import afterlength.workshop.climate.ClimateStore;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Sent;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.ReplacedAlready;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.SvgPen;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The glue pot on the shelf, and the working window. */
public final class GluePages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final VisitStore visits;
    private final InstrumentStore instruments;
    private final ClimateStore climate;
    private final GlueStore glue;
    private final Clock clock;

    public GluePages(
            Frames frames,
            SettingsStore settings,
            VisitStore visits,
            InstrumentStore instruments,
            ClimateStore climate,
            GlueStore glue,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.visits = visits;
        this.instruments = instruments;
        this.climate = climate;
        this.glue = glue;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/glue", this::show);
        routes.get("/shelf/glue/new", context -> showNew(context, BatchForm.usual(hand())));
        routes.post("/shelf/glue/new", this::make);
        routes.get("/shelf/glue/window", this::showWindow);
        routes.get("/shelf/glue/sheet.pdf", this::sheet);
        routes.get("/shelf/glue/{batch}", context -> showPot(context, pot(context), GluingForm.usual(), Typed.empty()));
        routes.post("/shelf/glue/{batch}/events", this::happen);
        routes.post("/shelf/glue/{batch}/gluings", this::glueJoint);
        routes.post("/shelf/glue/gluings/{gluing}/take-out", this::takeOut);
        routes.post("/shelf/glue/gluings/{gluing}/take-back", this::takeBack);
    }

    private void show(Context context) {
        List<Pot> all = glue.list();
        Templates.show(
                context,
                new GluePage(
                        frames.at(Frame.Place.SHELF, "The glue pot").back("/shelf", "Shelf"),
                        all.stream()
                                .filter(pot -> pot.stage() != PotStage.ENDED)
                                .toList(),
                        all.stream()
                                .filter(pot -> pot.stage() == PotStage.ENDED)
                                .toList(),
                        now()));
    }

    private void make(Context context) {
        Typed typed = Typed.from(context);
        Optional<GlueBatch> batch = BatchForm.read(typed, hand(), now());
        if (batch.isEmpty()) {
            showNew(context, typed);
            return;
        }
        PotEvent soaking = new PotEvent(
                0,
                0,
                PotStage.SOAKING,
                null,
                new Pot(batch.get(), List.of(), List.of()).usualDue(PotStage.SOAKING, now()),
                hand(),
                now());
        context.redirect(
                "/shelf/glue/" + glue.make(batch.get(), soaking).batch().id());
    }

    private void happen(Context context) {
        Pot pot = pot(context);
        Typed typed = Typed.from(context);
        Sent sent = Sent.read(context, now());
        if (glue.wasSent(sent)) {
            context.redirect("/shelf/glue/" + pot.batch().id());
            return;
        }
        Optional<PotEvent> event = EventForm.read(typed, pot, hand(), sent.at());
        if (event.isEmpty()) {
            showPot(context, pot, GluingForm.usual(), typed);
            return;
        }
        glue.add(event.get(), sent);
        context.redirect("/shelf/glue/" + pot.batch().id());
    }

    private void glueJoint(Context context) {
        Pot pot = pot(context);
        Typed typed = Typed.from(context);
        Optional<Gluing> gluing = GluingForm.read(typed, pot, inHouse(), climate, hand(), now());
        if (gluing.isEmpty()) {
            showPot(context, pot, typed, Typed.empty());
            return;
        }
        glue.add(gluing.get());
        context.redirect("/shelf/glue/" + pot.batch().id());
    }

    private void takeOut(Context context) {
        Gluing gluing = glue.getGluing(Addresses.id(context, "gluing"));
        try {
            Gluing out = gluing.withdrawn() ? gluing : glue.add(gluing.takenOut(now()));
            context.redirect("/shelf/glue/" + gluing.batchId() + "?out=" + out.id());
        } catch (ReplacedAlready takenOutBefore) {
            context.redirect("/shelf/glue/" + gluing.batchId());
        }
    }

    /** What was taken out is written once more, as it was. */
    private void takeBack(Context context) {
        Gluing out = glue.getGluing(Addresses.id(context, "gluing"));
        if (out.withdrawn()) {
            bringBack(out);
        }
        context.redirect("/shelf/glue/" + out.batchId());
    }

    /** A second press of the button finds it back already. */
    private void bringBack(Gluing out) {
        try {
            glue.add(out.broughtBack(now()));
        } catch (ReplacedAlready broughtBackBefore) {
            System.getLogger(GluePages.class.getName()).log(System.Logger.Level.DEBUG, broughtBackBefore);
        }
    }

    private void showNew(Context context, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(context, new BatchPage(inPot("Make up a batch"), typed));
    }

    private void showPot(Context context, Pot pot, Typed typed, Typed event) {
        context.status(typed.sound() && event.sound() ? 200 : 422);
        Templates.show(
                context,
                new PotPage(inPot(pot.batch().name()), pot, inHouse(), typed, event, now(), justTakenOut(context)));
    }

    private @Nullable Gluing justTakenOut(Context context) {
        String id = context.queryParam("out");
        return id != null && id.matches("\\d{1,18}") ? glue.getGluing(Long.parseLong(id)) : null;
    }

    private void showWindow(Context context) {
        Map<String, String> asked = new LinkedHashMap<>();
        context.queryParamMap().forEach((name, values) -> asked.put(name, values.isEmpty() ? "" : values.get(0)));
        Typed typed = asked.isEmpty() ? WindowForm.usual() : Typed.known(asked);
        Spread spread = WindowForm.read(typed).orElse(null);
        Addresses.status(context, typed);
        Frame frame = inPot("How long does a film stay workable?");
        if (spread != null && WorkingWindow.of(spread) instanceof WorkingWindow.Known window) {
            String drawing = SvgPen.forScreen(WindowChart.of(spread, window));
            Templates.show(context, new WindowPage(frame, typed, window, drawing, WindowLine.of(spread)));
        } else {
            Templates.show(context, new WindowPage(frame, typed, null, "", List.of()));
        }
    }

    private void sheet(Context context) {
        Spread spruce = WindowForm.read(WindowForm.usual()).orElseThrow();
        Map<String, String> onMaple = new LinkedHashMap<>(WindowForm.usualFields());
        onMaple.put("wood", "maple");
        Spread maple = WindowForm.read(Typed.known(onMaple)).orElseThrow();
        byte[] pdf = GlueSheet.of(settings.get(), glue.listOpen(), spruce, maple, now())
                .pdf();
        context.contentType("application/pdf").result(pdf);
    }

    private List<Choice> inHouse() {
        return visits.listInHouse().stream()
                .map(visit -> new Choice(
                        Long.toString(visit.id()),
                        instruments.get(visit.instrumentId()).name()))
                .toList();
    }

    private Pot pot(Context context) {
        return glue.get(Addresses.id(context, "batch"));
    }

    private String hand() {
        return settings.get().usualHand();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    private Frame inPot(String title) {
        return frames.at(Frame.Place.SHELF, title).back("/shelf/glue", "The glue pot");
    }
}
