package afterlength.workshop.work;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Sent;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.Optional;

/** The buttons that write with one tap, and the way back from each. */
final class TapPages implements Room {
    private final SettingsStore settings;
    private final OneTap tap;
    private final DiaryStore diary;
    private final Clock clock;

    TapPages(SettingsStore settings, OneTap tap, DiaryStore diary, Clock clock) {
        this.settings = settings;
        this.tap = tap;
        this.diary = diary;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.post(
                "/steps/{step}/start",
                context -> answer(
                        context,
                        tap.start(Addresses.id(context, "step"), hand(context), sent(context), clock.instant())));
        routes.post(
                "/steps/{step}/done",
                context -> answer(
                        context,
                        tap.done(Addresses.id(context, "step"), hand(context), sent(context), clock.instant())));
        routes.post(
                "/diary/{entry}/take-out",
                context -> answer(context, diary.withdraw(Addresses.id(context, "entry"), clock.instant())));
        routes.post(
                "/diary/{entry}/put-in-again",
                context -> answer(context, diary.takeBack(Addresses.id(context, "entry"), clock.instant())));
    }

    private String hand(Context context) {
        return Hands.current(context, settings.get().hands());
    }

    private Sent sent(Context context) {
        return Sent.read(context, clock.instant());
    }

    private static void answer(Context context, OneTap.Tapped tapped) {
        goBack(context, OneTap.visitOf(tapped), OneTap.answer(tapped));
    }

    /** An entry that was replaced meanwhile is left as it is; the page shows what holds. */
    private void answer(Context context, Optional<DiaryEntry> written) {
        DiaryEntry entry = written.orElseGet(() -> diary.get(Addresses.id(context, "entry")));
        goBack(
                context,
                entry.writing().visitId(),
                written.map(done -> "?entry=" + done.id()).orElse(""));
    }

    /** To the page the button stood on. */
    private static void goBack(Context context, long visitId, String what) {
        boolean fromWork = "work".equals(context.formParam("from"));
        context.redirect((fromWork ? "/visits/" + visitId + "/work" : "/") + what);
    }
}
