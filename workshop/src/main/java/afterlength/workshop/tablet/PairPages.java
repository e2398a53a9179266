package afterlength.workshop.tablet;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.ShopSign;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;

/** Where a tablet is paired; the only pages that a stranger in the network is shown, and they tell nothing of the shop. */
final class PairPages implements Room {
    private static final Frame FRAME =
            new Frame(new ShopSign("Afterlength", false), Frame.Place.TODAY, "Pair a tablet", null, "");
    private static final int HALF_A_YEAR_S = 183 * 24 * 3600;

    private final TabletStore tablets;
    private final PairingCode code;
    private final Guesses guesses = new Guesses();
    private final Clock clock;

    PairPages(TabletStore tablets, PairingCode code, Clock clock) {
        this.tablets = tablets;
        this.code = code;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/pair", context -> {
            String shown = context.queryParam("code");
            show(context, Typed.known(Map.of("code", shown == null || !shown.matches("\\d{8}") ? "" : shown)));
        });
        routes.post("/pair", this::pair);
    }

    private void pair(Context context) {
        Instant now = clock.instant();
        Typed typed = Typed.from(context);
        String name = typed.required("name", "The tablet's name", 60);
        if (guesses.tooMany(now)) {
            typed.note("code", "Too many codes were tried. Wait a quarter of an hour, then ask for a fresh code.");
        } else if (typed.sound() && !code.redeem(typed.raw("code"), now)) {
            guesses.note(now);
            typed.note(
                    "code",
                    "The code is not the one on the shop's screen, or it is used up. Ask there for a fresh one.");
        }
        if (typed.sound()) {
            String secret = Secret.fresh();
            tablets.add(name, secret, now);
            context.cookie(
                    new Cookie(TabletEntrance.COOKIE, secret, "/", HALF_A_YEAR_S, true, true, null, SameSite.STRICT));
            context.redirect("/");
        } else {
            show(context, typed);
        }
    }

    private static void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        Templates.show(context, new PairPage(FRAME, typed));
    }
}
