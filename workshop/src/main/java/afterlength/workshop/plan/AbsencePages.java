package afterlength.workshop.plan;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Who is ill or away, and taking that back; both lead to the page that shows what it changes. */
final class AbsencePages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final AbsenceStore absences;
    private final Clock clock;

    AbsencePages(Frames frames, SettingsStore settings, AbsenceStore absences, Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.absences = absences;
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get(
                "/plan/absences/new",
                context -> show(
                        context,
                        Typed.known(Map.of("from_day", Days.day(clock.instant()).toString()))));
        routes.post("/plan/absences/new", this::add);
        routes.post("/plan/absences/{absence}/take-back", context -> {
            long id = Addresses.id(context, "absence");
            absences.withdraw(id, settings.get().usualHand(), clock.instant());
            context.redirect("/plan/again?back=" + id);
        });
    }

    private void add(Context context) {
        Typed typed = Typed.from(context);
        List<String> hands = settings.get().hands();
        Instant now = clock.instant();
        Absence read = AbsenceForm.read(typed, hands, hands.get(0), now);
        if (read == null) {
            show(context, typed);
        } else {
            context.redirect("/plan/again?absence=" + absences.add(read).id());
        }
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = frames.at(Frame.Place.TODAY, "Somebody is ill or away").back("/plan", "The week");
        List<Choice> hands = settings.get().hands().stream()
                .map(hand -> new Choice(hand, hand))
                .toList();
        Templates.show(context, new AbsencePage(frame, hands, typed));
    }
}
