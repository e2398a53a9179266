package afterlength.workshop.tablet;

import afterlength.sight.card.PairingSquare;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.List;

/** Opening and shutting the door for tablets, and the list of those that were paired. */
public final class TabletPages implements Room {
    public static final int USUAL_PORT = 4171;

    private final Frames frames;
    private final TabletDoor door;
    private final TabletStore tablets;
    private final Clock clock;
    private final int port;

    /** The last value is the port of the door, 0 for any free one. */
    public TabletPages(Frames frames, TabletDoor door, TabletStore tablets, Clock clock, int port) {
        this.frames = frames;
        this.door = door;
        this.tablets = tablets;
        this.clock = clock;
        this.port = port;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/tablets", context -> show(context, Typed.empty()));
        routes.post("/shelf/tablets/open", this::openDoor);
        routes.post("/shelf/tablets/shut", context -> {
            door.close();
            context.redirect("/shelf/tablets");
        });
        routes.post("/shelf/tablets/{tablet}/shut-out", context -> {
            tablets.shutOut(Addresses.id(context, "tablet"), clock.instant());
            context.redirect("/shelf/tablets");
        });
    }

    private void openDoor(Context context) {
        Typed typed = Typed.from(context);
        try {
            door.open(port);
            context.redirect("/shelf/tablets");
        } catch (IOException | JavalinBindException refused) {
            typed.note(
                    "door",
                    "The door could not be opened: " + refused.getMessage() + ". Nothing listens to the network.");
            show(context, typed);
        }
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = frames.at(Frame.Place.SHELF, "Tablets").back("/shelf", "Shelf");
        String code = door.isOpen() ? door.code().find(clock.instant()).orElse("") : "";
        List<String> names = OwnAddresses.list();
        String address = names.isEmpty() ? "" : "https://" + names.get(0) + ":" + door.port() + "/pair";
        String square = code.isEmpty() || names.isEmpty() ? "" : PairingSquare.svg(address + "?code=" + code);
        Templates.show(
                context,
                new TabletPage(
                        frame, door.isOpen(), address, square, grouped(code), fingerprint(), tablets.list(), typed));
    }

    private String fingerprint() {
        try {
            return door.isOpen() ? door.fingerprint() : "";
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String grouped(String code) {
        return code.isEmpty() ? "" : code.substring(0, 4) + " " + code.substring(4);
    }
}
