package afterlength.workshop.retouch;

import afterlength.craft.varnish.Ingredient;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;

/** The varnish book on the shelf. */
public final class VarnishPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final VarnishStore book;
    private final DryingAir air;
    private final Clock clock;

    public VarnishPages(Frames frames, SettingsStore settings, VarnishStore book, DryingAir air, Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.book = book;
        this.air = air;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/varnish", this::show);
        routes.get("/shelf/varnish/new", context -> showNew(context, fresh()));
        routes.post("/shelf/varnish/new", this::add);
        routes.get("/shelf/varnish/{varnish}", context -> showOne(context, fresh()));
        routes.post("/shelf/varnish/{varnish}/coats", this::addCoat);
        routes.post("/shelf/varnish/{varnish}/coats/{coat}/withdraw", this::withdraw);
        routes.post("/shelf/varnish/{varnish}/put-away", context -> put(context, true));
        routes.post("/shelf/varnish/{varnish}/take-back", context -> put(context, false));
    }

    private void show(Context context) {
        Frame frame = frames.at(Frame.Place.SHELF, "The varnish book").back("/shelf", "Shelf");
        List<VarnishEntry> entries = book.list().stream().map(this::entry).toList();
        Templates.show(context, new VarnishBookPage(frame, entries));
    }

    private void add(Context context) {
        Typed typed = Typed.from(context);
        Varnish varnish = VarnishForm.varnish(typed, now());
        List<Ingredient> ingredients = VarnishForm.ingredients(typed);
        if (typed.sound()) {
            context.redirect("/shelf/varnish/" + book.add(varnish, ingredients));
        } else {
            showNew(context, typed);
        }
    }

    private void addCoat(Context context) {
        Typed typed = Typed.from(context);
        VarnishCoat coat = VarnishForm.coat(typed, varnish(context).id(), air, LocalDate.now(clock), now());
        if (coat == null) {
            showOne(context, typed);
        } else {
            book.add(coat);
            context.redirect("/shelf/varnish/" + coat.varnishId() + "#coats");
        }
    }

    private void withdraw(Context context) {
        long id = Addresses.id(context, "coat");
        Varnish varnish = varnish(context);
        VarnishCoat held = book.coats(varnish.id()).stream()
                .filter(coat -> coat.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotHere("coat", id));
        book.add(held.withdrawnAt(now()));
        context.redirect("/shelf/varnish/" + varnish.id() + "#coats");
    }

    private void put(Context context, boolean away) {
        book.put(varnish(context).id(), away);
        context.redirect("/shelf/varnish");
    }

    private void showNew(Context context, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(context, new NewVarnishPage(inBook("A batch of varnish"), typed));
    }

    private void showOne(Context context, Typed typed) {
        Addresses.status(context, typed);
        Varnish varnish = varnish(context);
        Templates.show(context, new VarnishPage(inBook(varnish.name()), entry(varnish), typed));
    }

    private VarnishEntry entry(Varnish varnish) {
        return VarnishEntry.of(book, varnish, air, now());
    }

    private Typed fresh() {
        return Typed.known(Map.of(
                "hand",
                settings.get().usualHand(),
                "laid_on",
                LocalDate.now(clock).toString()));
    }

    private Frame inBook(String title) {
        return frames.at(Frame.Place.SHELF, title).back("/shelf/varnish", "The varnish book");
    }

    private Varnish varnish(Context context) {
        return book.get(Addresses.id(context, "varnish"));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
