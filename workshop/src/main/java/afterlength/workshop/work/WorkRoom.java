package afterlength.workshop.work;

import afterlength.workshop.agreement.PracticeStore;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import io.javalin.config.RoutesConfig;
import java.time.Clock;
import java.util.List;

/** All pages of this stage: Today, the work on a visit, the diary, the shelf. */
public final class WorkRoom implements Room {
    private final List<Room> rooms;

    public WorkRoom(
            Frames frames,
            Ledger ledger,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            Clock clock) {
        this(frames, ledger, settings, instruments, visits, List.of(), BenchAhead.UNPLANNED, ComingChecks.NONE, clock);
    }

    /** With clocks of the bench that belong to no step, with a plan and with checks to come. */
    public WorkRoom(
            Frames frames,
            Ledger ledger,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            List<BenchTimers> timers,
            BenchAhead plan,
            ComingChecks checks,
            Clock clock) {
        StepStore steps = new StepStore(ledger);
        DiaryStore diary = new DiaryStore(ledger);
        MaterialStore materials = new MaterialStore(ledger);
        rooms = List.of(
                new TodayPages(frames, ledger, settings, steps, diary, timers, plan, checks, clock),
                new TapPages(settings, new OneTap(ledger), diary, clock),
                new WorkPages(frames, ledger, instruments, visits, steps, diary, clock),
                new StepPages(frames, ledger, visits, steps),
                new DiaryPages(frames, settings, visits, steps, diary, materials, plan, clock),
                new TimePages(frames, settings, new PracticeStore(ledger), clock),
                new ShelfPages(frames, settings, materials));
    }

    @Override
    public void open(RoutesConfig routes) {
        rooms.forEach(room -> room.open(routes));
    }
}
