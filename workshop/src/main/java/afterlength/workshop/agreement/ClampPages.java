package afterlength.workshop.agreement;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The clamps on the shelf: written down, put away. */
public final class ClampPages implements Room {
    private final Frames frames;
    private final ClampStore clamps;

    public ClampPages(Frames frames, ClampStore clamps) {
        this.frames = frames;
        this.clamps = clamps;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/clamps", context -> show(context, Typed.empty()));
        routes.post("/shelf/clamps", this::add);
        routes.post("/shelf/clamps/{clamp}/put-away", this::putAway);
    }

    private void show(Context context, Typed typed) {
        Frame frame = frames.at(Frame.Place.SHELF, "Clamps").back("/shelf", "The shelf");
        Addresses.status(context, typed);
        Templates.show(context, new ClampsPage(frame, clamps.list(), typed));
    }

    private void add(Context context) {
        Typed typed = Typed.from(context);
        ShopClamp clamp = ClampForm.read(typed);
        if (typed.sound()) {
            clamps.add(clamp);
            context.redirect("/shelf/clamps");
        } else {
            show(context, typed);
        }
    }

    private void putAway(Context context) {
        clamps.putAway(Addresses.id(context, "clamp"));
        context.redirect("/shelf/clamps");
    }
}
