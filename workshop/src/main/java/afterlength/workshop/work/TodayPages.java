package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;

/** Today: what hands should do next, what dries, what waits for other stages, what is to be checked again. */
final class TodayPages implements Room {
    private final Frames frames;
    private final SettingsStore settings;
    private final HouseStore house;
    private final StepStore steps;
    private final DiaryStore diary;
    private final List<BenchTimers> timers;
    private final BenchAhead plan;
    private final ComingChecks checks;
    private final Clock clock;
    private final Notices notices;

    TodayPages(
            Frames frames,
            Ledger ledger,
            SettingsStore settings,
            StepStore steps,
            DiaryStore diary,
            List<BenchTimers> timers,
            BenchAhead plan,
            ComingChecks checks,
            Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.house = new HouseStore(ledger);
        this.steps = steps;
        this.diary = diary;
        this.timers = timers;
        this.plan = plan;
        this.checks = checks;
        this.clock = clock;
        this.notices = new Notices(diary, steps, clock);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/", this::show);
        routes.post("/today/hand", this::chooseHand);
    }

    private void show(Context context) {
        Settings now = settings.get();
        BenchAhead.Ahead ahead = plan.at(clock.instant());
        LocalTime closesAt = ahead.closesAt() == null ? now.closesAt() : ahead.closesAt();
        Today today = Today.of(
                ahead.inOrder(house.list()),
                steps.listInHouse(),
                diary.listInHouse(),
                new DayLeft(clock.instant(), closesAt));
        Templates.show(
                context,
                new TodayPage(
                        frames.at(Frame.Place.TODAY, "Today"),
                        today,
                        ahead,
                        TodayWords.sentence(today),
                        notices.read(context).orElse(null),
                        now.hands(),
                        Hands.current(context, now.hands()),
                        timers.stream()
                                .flatMap(one -> one.list(today.now()).stream())
                                .sorted(Comparator.comparing(BenchTimer::until))
                                .toList(),
                        checks.list(Days.day(today.now()))));
    }

    private void chooseHand(Context context) {
        String hand = context.formParam("hand");
        if (hand != null && settings.get().hands().contains(hand)) {
            Hands.remember(context, hand);
        }
        context.redirect("/");
    }
}
