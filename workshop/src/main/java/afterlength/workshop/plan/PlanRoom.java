package afterlength.workshop.plan;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.work.DiaryStore;
import io.javalin.config.RoutesConfig;
import java.util.List;

/** All pages of the plan. */
public final class PlanRoom implements Room {
    private final List<Room> rooms;

    public PlanRoom(Frames frames, Ledger ledger, SettingsStore settings, BenchPlans plans) {
        AbsenceStore absences = new AbsenceStore(ledger);
        Occasions occasions = new Occasions(plans, new DiaryStore(ledger), absences);
        rooms = List.of(new WeekPages(frames, plans), new DraftPages(frames, settings, plans, occasions));
    }

    @Override
    public void open(RoutesConfig routes) {
        rooms.forEach(room -> room.open(routes));
    }
}
