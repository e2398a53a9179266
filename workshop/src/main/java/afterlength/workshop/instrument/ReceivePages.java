package afterlength.workshop.instrument;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Taking an instrument in: for the first time, again, or correcting what the receipt says. */
public final class ReceivePages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final Clock clock;

    public ReceivePages(
            Frames frames,
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            VisitStore visits,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/receive", context -> showFirst(context, Typed.known(Map.of("received_on", today().toString()))));
        routes.post("/receive", this::receiveFirst);
        routes.get(
                "/instruments/{instrument}/receive",
                context -> showAgain(context, Typed.known(Map.of("received_on", today().toString()))));
        routes.post("/instruments/{instrument}/receive", this::receiveAgain);
        routes.get("/visits/{visit}/receipt", this::openReceipt);
        routes.post("/visits/{visit}/receipt", this::changeReceipt);
    }

    private void receiveFirst(Context context) {
        Typed typed = Typed.from(context);
        Owner owner = ownerOf(typed);
        Arrival arrival = new Arrival(
                owner, InstrumentForm.read(typed, 0, owner.id(), 1), ReceiptForm.read(typed, 0, 0, "", today(), 1));
        if (typed.sound()) {
            context.redirect("/instruments/" + visits.receive(arrival).instrumentId());
        } else {
            showFirst(context, typed);
        }
    }

    /** An owner who is already known is chosen; otherwise the fields tell a new one. */
    private Owner ownerOf(Typed typed) {
        String chosen = typed.raw("owner");
        return chosen.matches("[1-9]\\d{0,17}") ? owners.get(Long.parseLong(chosen)) : OwnerForm.read(typed, 0, 1);
    }

    private void receiveAgain(Context context) {
        Instrument instrument = instruments.get(Addresses.id(context, "instrument"));
        Typed typed = Typed.from(context);
        Visit visit = ReceiptForm.read(typed, 0, instrument.id(), "", today(), 1);
        if (typed.sound()) {
            visits.receiveAgain(visit);
            context.redirect("/instruments/" + instrument.id());
        } else {
            showAgain(context, typed);
        }
    }

    private void openReceipt(Context context) {
        Visit visit = visits.get(Addresses.id(context, "visit"));
        showReceipt(context, visit, Typed.known(ReceiptForm.typedOf(visit)));
    }

    private void changeReceipt(Context context) {
        Visit before = visits.get(Addresses.id(context, "visit"));
        Typed typed = Typed.from(context);
        Visit after = ReceiptForm.read(
                typed,
                before.id(),
                before.instrumentId(),
                before.number(),
                before.receivedOn(),
                Addresses.version(typed));
        if (typed.sound() && !visits.change(after)) {
            Addresses.noteChangedMeanwhile(typed, ReceiptForm.typedOf(before));
        }
        if (typed.sound()) {
            context.redirect("/instruments/" + before.instrumentId());
        } else {
            showReceipt(context, before, typed);
        }
    }

    private void showFirst(Context context, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = frames.of("Receive an instrument").back("/", "Today");
        Templates.show(context, page(frame, "/receive", null, owners.list(), typed));
    }

    private void showAgain(Context context, Typed typed) {
        Addresses.status(context, typed);
        Instrument instrument = instruments.get(Addresses.id(context, "instrument"));
        String home = "/instruments/" + instrument.id();
        Templates.show(
                context,
                page(
                        frames.of("Receive again").back(home, instrument.name()),
                        home + "/receive",
                        instrument,
                        List.of(),
                        typed));
    }

    private void showReceipt(Context context, Visit visit, Typed typed) {
        Addresses.status(context, typed);
        Instrument instrument = instruments.get(visit.instrumentId());
        Frame frame = frames.of("Receipt " + visit.number()).back("/instruments/" + instrument.id(), instrument.name());
        Templates.show(context, page(frame, "/visits/" + visit.id() + "/receipt", instrument, List.of(), typed));
    }

    private ReceivePage page(
            Frame frame, String address, @Nullable Instrument known, List<Owner> choices, Typed typed) {
        return new ReceivePage(frame, address, known, choices, settings.get().currency(), typed);
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
