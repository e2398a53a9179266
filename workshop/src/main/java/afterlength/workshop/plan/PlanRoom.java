package afterlength.workshop.plan;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.work.DiaryStore;
import io.javalin.config.RoutesConfig;
import java.time.Clock;
import java.util.List;

/** All pages of the plan. */
public final class PlanRoom implements Room {
    private final List<Room> rooms;
    private final PlanAgreed agreed;

    public PlanRoom(
            Frames frames,
            Ledger ledger,
            SettingsStore settings,
            InstrumentStore instruments,
            VisitStore visits,
            BenchPlans plans,
            PlanAgreed agreed) {
        Clock clock = plans.clock();
        AbsenceStore absences = new AbsenceStore(ledger);
        this.agreed = agreed;
        rooms = List.of(
                new WeekPages(frames, plans, agreed),
                new DraftPages(frames, settings, plans, new Occasions(plans, new DiaryStore(ledger), absences)),
                new AbsencePages(frames, settings, absences, clock),
                new UrgencyPages(frames, settings, visits, instruments, new UrgencyStore(ledger), clock),
                new RulesPages(frames, settings, new BenchRulesStore(ledger, settings)),
                new ReasonPages(frames, plans),
                new WishPages(frames, plans),
                new PlanFiles(plans));
    }

    @Override
    public void open(RoutesConfig routes) {
        agreed.watch();
        rooms.forEach(room -> room.open(routes));
    }
}
