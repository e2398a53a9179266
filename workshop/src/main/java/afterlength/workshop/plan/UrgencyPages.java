package afterlength.workshop.plan;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** Something is wanted sooner, or promised for another day. */
final class UrgencyPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final VisitStore visits;
    private final InstrumentStore instruments;
    private final UrgencyStore urgency;
    private final Clock clock;

    UrgencyPages(
            Frames frames,
            SettingsStore settings,
            VisitStore visits,
            InstrumentStore instruments,
            UrgencyStore urgency,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.visits = visits;
        this.instruments = instruments;
        this.urgency = urgency;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/plan/visits/{visit}", context -> show(context, visit(context), Typed.known(known(visit(context)))));
        routes.post("/plan/visits/{visit}", this::keep);
    }

    private Map<String, String> known(Visit visit) {
        Map<String, String> known = new HashMap<>();
        known.put(
                "urgency",
                urgency.byVisit().getOrDefault(visit.id(), Urgency.ORDINARY).name());
        LocalDate promised = visit.promisedOn();
        known.put("promised", promised == null ? "" : promised.toString());
        return known;
    }

    private void keep(Context context) {
        Visit visit = visit(context);
        Typed typed = Typed.from(context);
        Urgency chosen = typed.choice("urgency", "How much it matters", Urgency.class);
        LocalDate promised = typed.date("promised", "The promised day");
        if (promised != null && promised.isBefore(visit.receivedOn())) {
            typed.note(
                    "promised",
                    "The promised day " + promised + " lies before the receipt on " + visit.receivedOn()
                            + "; choose that day or a later one.");
        }
        if (typed.sound() && chosen != null) {
            urgency.put(visit.id(), chosen, promised, settings.get().usualHand(), clock.instant());
            context.redirect("/plan/again?visit=" + visit.id());
        } else {
            show(context, visit, typed);
        }
    }

    private void show(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        String name = instruments.get(visit.instrumentId()).name();
        Frame frame =
                frames.at(Frame.Place.TODAY, "When " + name + " is wanted").back("/plan", "The week");
        Templates.show(context, new UrgencyPage(frame, "/plan/visits/" + visit.id(), typed));
    }

    private Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }
}
