package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.HouseStore;
import afterlength.workshop.work.StepStore;
import java.time.Instant;

/** Opens all books a plan is made of. */
final class ShopBooks {
    private final SettingsStore settings;
    private final BenchRulesStore rules;
    private final AbsenceStore absences;
    private final UrgencyStore urgency;
    private final HouseStore house;
    private final StepStore steps;
    private final DiaryStore diary;

    ShopBooks(Ledger ledger, SettingsStore settings) {
        this.settings = settings;
        this.rules = new BenchRulesStore(ledger, settings);
        this.absences = new AbsenceStore(ledger);
        this.urgency = new UrgencyStore(ledger);
        this.house = new HouseStore(ledger);
        this.steps = new StepStore(ledger);
        this.diary = new DiaryStore(ledger);
    }

    ShopWork at(Instant now) {
        return new ShopWork(
                now,
                settings.get(),
                rules.get(),
                absences.listFrom(Days.day(now)),
                urgency.byVisit(),
                house.list(),
                steps.listInHouse(),
                diary.listInHouse());
    }
}
