package afterlength.workshop.examination;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/** How an instrument was looked at: written on its own page, listed and withdrawn beside the findings. */
public final class SittingPages implements Room {
    private final VisitHome home;
    private final SettingsStore settings;
    private final SittingStore sittings;
    private final RoomAir roomAir;
    private final Clock clock;

    public SittingPages(VisitHome home, SettingsStore settings, SittingStore sittings, RoomAir roomAir, Clock clock) {
        this.home = home;
        this.settings = settings;
        this.sittings = sittings;
        this.roomAir = roomAir;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/visits/{visit}/sittings", context -> show(context, null));
        routes.post("/visits/{visit}/sittings", this::write);
        routes.post("/sittings/{sitting}/withdraw", this::withdraw);
        routes.post("/sittings/{sitting}/bring-back", this::bringBack);
    }

    private void show(Context context, @Nullable Typed refused) {
        Visit visit = home.visit(context);
        Typed typed = refused == null ? fresh() : refused;
        Addresses.status(context, typed);
        Templates.show(
                context,
                new SittingPage(
                        home.frame("How it was looked at, visit " + visit.number(), pageOf(visit.id()), "Findings"),
                        visit.id(),
                        settings.get().hands(),
                        typed));
    }

    private Typed fresh() {
        Instant midnight = LocalDate.now(clock).atStartOfDay(clock.getZone()).toInstant();
        return SittingForm.fresh(
                roomAir.find(clock.instant(), midnight).orElse(Air.UNKNOWN),
                settings.get().usualHand());
    }

    private void write(Context context) {
        Visit visit = home.visit(context);
        Typed typed = Typed.from(context);
        Sitting sitting = SittingForm.read(typed, visit.id(), now());
        if (typed.sound()) {
            sittings.add(sitting);
            context.redirect(pageOf(visit.id()));
        } else {
            show(context, typed);
        }
    }

    private void withdraw(Context context) {
        Sitting withdrawn = sittings.withdraw(Addresses.id(context, "sitting"), now());
        context.redirect(pageOf(withdrawn.visitId()) + "?withdrawn-sitting=" + withdrawn.id());
    }

    private void bringBack(Context context) {
        Sitting back = sittings.bringBack(Addresses.id(context, "sitting"), now());
        context.redirect(pageOf(back.visitId()));
    }

    private static String pageOf(long visitId) {
        return "/visits/" + visitId + "/examination";
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }
}
