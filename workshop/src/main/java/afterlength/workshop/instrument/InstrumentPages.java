package afterlength.workshop.instrument;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The list of instruments, and the one long page that tells an instrument's story stage by stage. */
public final class InstrumentPages implements Room {
    /** A longer list is shown only when asked for: a person searches rather than reads thousands of lines. */
    static final int SHOWN = 100;

    private final Frames frames;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final List<Chapter> chapters;

    /** The chapters are what the stages tell about a visit, in the order of the job. */
    public InstrumentPages(
            Frames frames, OwnerStore owners, InstrumentStore instruments, VisitStore visits, List<Chapter> chapters) {
        this.frames = frames;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.chapters = chapters;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/instruments", this::list);
        routes.get("/instruments/{instrument}", this::story);
        routes.get("/instruments/{instrument}/edit", context -> showEdit(context, null));
        routes.post("/instruments/{instrument}/edit", this::edit);
        routes.get("/owners/{owner}/edit", context -> showOwner(context, null));
        routes.post("/owners/{owner}/edit", this::editOwner);
    }

    private void list(Context context) {
        String words = context.queryParam("find") == null ? "" : String.valueOf(context.queryParam("find"));
        int most = context.queryParam("all") == null ? SHOWN : Integer.MAX_VALUE;
        Templates.show(context, new InstrumentsPage(frames.of("Instruments"), words, instruments.find(words, most)));
    }

    private void story(Context context) {
        Instrument instrument = instruments.get(Addresses.id(context, "instrument"));
        List<VisitStory> stories = visits.listOf(instrument.id()).stream()
                .map(visit -> VisitStory.of(visit, chapters))
                .toList();
        Templates.show(
                context,
                new InstrumentPage(
                        frames.of(instrument.name()).back("/instruments", "Instruments"),
                        instrument,
                        owners.get(instrument.ownerId()),
                        stories));
    }

    private void showEdit(Context context, @Nullable Typed refused) {
        Instrument instrument = instruments.get(Addresses.id(context, "instrument"));
        Typed typed = refused == null ? Typed.known(InstrumentForm.typedOf(instrument)) : refused;
        Frame frame = frames.of("Instrument and story").back("/instruments/" + instrument.id(), instrument.name());
        Addresses.status(context, typed);
        Templates.show(context, new EditPage(frame, "/instruments/" + instrument.id() + "/edit", typed));
    }

    private void edit(Context context) {
        Instrument before = instruments.get(Addresses.id(context, "instrument"));
        Typed typed = Typed.from(context);
        Instrument after = InstrumentForm.read(typed, before.id(), before.ownerId(), Addresses.version(typed));
        if (typed.sound() && !instruments.change(after)) {
            Addresses.noteChangedMeanwhile(typed, before.version());
        }
        if (typed.sound()) {
            context.redirect("/instruments/" + before.id());
        } else {
            showEdit(context, typed);
        }
    }

    private void showOwner(Context context, @Nullable Typed refused) {
        Owner owner = owners.get(Addresses.id(context, "owner"));
        Typed typed = refused == null ? Typed.known(OwnerForm.typedOf(owner)) : refused;
        Addresses.status(context, typed);
        Templates.show(
                context,
                new OwnerPage(
                        frames.of("Owner").back("/instruments?find=" + Addresses.encoded(owner.name()), owner.name()),
                        "/owners/" + owner.id() + "/edit",
                        typed));
    }

    private void editOwner(Context context) {
        Owner before = owners.get(Addresses.id(context, "owner"));
        Typed typed = Typed.from(context);
        Owner after = OwnerForm.read(typed, before.id(), Addresses.version(typed));
        if (typed.sound() && !owners.change(after)) {
            Addresses.noteChangedMeanwhile(typed, before.version());
        }
        if (typed.sound()) {
            context.redirect("/instruments?find=" + Addresses.encoded(after.name()));
        } else {
            showOwner(context, typed);
        }
    }
}
