package afterlength.workshop.closing;

import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;

/** The list of what has to be recorded before it is covered. */
public final class LastChancePages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final VisitStore visits;
    private final AgreementStore agreements;
    private final TreatmentStore treatments;
    private final TickStore ticks;
    private final Clock clock;

    public LastChancePages(
            Frames frames,
            SettingsStore settings,
            VisitStore visits,
            AgreementStore agreements,
            TreatmentStore treatments,
            TickStore ticks,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.visits = visits;
        this.agreements = agreements;
        this.treatments = treatments;
        this.ticks = ticks;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/last-chance", this::openPage);
        routes.post("/visits/{visit}/last-chance", this::tick);
    }

    private void openPage(Context context) {
        show(context, visit(context), Typed.known(Map.of("hand", settings.get().usualHand())));
    }

    private void tick(Context context) {
        Visit visit = visit(context);
        Typed typed = Typed.from(context);
        Optional<CoveredThing> thing = CoveredThings.find(typed.raw("thing"));
        if (thing.isEmpty()) {
            typed.note(
                    "thing",
                    "“" + typed.raw("thing") + "” is not on the list; tick one of the things that stand here.");
        }
        String note = typed.text("note", "Where it is recorded", 300);
        String hand = typed.required("hand", "The hand", 80);
        if (typed.sound() && thing.isPresent()) {
            ticks.add(new Tick(
                    0,
                    visit.id(),
                    thing.get().key(),
                    thing.get().words(),
                    !typed.raw("do").equals("open"),
                    note,
                    hand,
                    clock.instant().truncatedTo(ChronoUnit.SECONDS)));
            context.redirect("/visits/" + visit.id() + "/last-chance");
        } else {
            show(context, visit, typed);
        }
    }

    private void show(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(
                context,
                new LastChancePage(
                        frames.of("Last chance before closing")
                                .back("/visits/" + visit.id() + "/agreement", "What could be done"),
                        visit.id(),
                        LastChance.of(visit.id(), agreements, treatments, ticks.latest(visit.id())),
                        typed));
    }

    private Visit visit(Context context) {
        return visits.get(Addresses.id(context, "visit"));
    }
}
