package afterlength.workshop.agreement;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;

/** The clamps on the shelf: written down, changed, put away. */
public final class ClampPages implements Room {
    private final Frames frames;
    private final ClampStore clamps;

    public ClampPages(Frames frames, ClampStore clamps) {
        this.frames = frames;
        this.clamps = clamps;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/clamps", context -> show(context, Typed.empty(), null));
        routes.get("/shelf/clamps/{clamp}", context -> {
            ShopClamp clamp = clamp(context);
            show(context, ClampForm.known(clamp), clamp);
        });
        routes.post("/shelf/clamps/{clamp}", this::change);
        routes.post("/shelf/clamps", this::add);
        routes.post("/shelf/clamps/{clamp}/put-away", this::putAway);
    }

    private ShopClamp clamp(Context context) {
        long id = Addresses.id(context, "clamp");
        return clamps.list().stream()
                .filter(clamp -> clamp.id() == id)
                .findFirst()
                .orElseThrow(() -> new NotHere("clamp", id));
    }

    private void change(Context context) {
        ShopClamp before = clamp(context);
        Typed typed = Typed.from(context);
        ShopClamp now = ClampForm.read(typed, before.id());
        if (typed.sound()) {
            clamps.change(now);
            context.redirect("/shelf/clamps");
        } else {
            show(context, typed, before);
        }
    }

    private void show(Context context, Typed typed, @Nullable ShopClamp changing) {
        Frame frame = frames.at(Frame.Place.SHELF, "Clamps").back("/shelf", "The shelf");
        Addresses.status(context, typed);
        Templates.show(context, new ClampsPage(frame, clamps.list(), typed, changing));
    }

    private void add(Context context) {
        Typed typed = Typed.from(context);
        ShopClamp clamp = ClampForm.read(typed, 0);
        if (typed.sound()) {
            clamps.add(clamp);
            context.redirect("/shelf/clamps");
        } else {
            show(context, typed, null);
        }
    }

    private void putAway(Context context) {
        clamps.putAway(Addresses.id(context, "clamp"));
        context.redirect("/shelf/clamps");
    }
}
