package afterlength.workshop.plan;

import afterlength.workshop.ledger.Settings;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.HouseVisit;
import afterlength.workshop.work.Step;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Everything a plan is made of, as the shop's books tell it at one moment. */
record ShopWork(
        Instant now,
        Settings settings,
        BenchRules rules,
        List<Absence> absences,
        Map<Long, Urgency> urgency,
        List<HouseVisit> house,
        List<Step> steps,
        List<DiaryEntry> diary) {

    /** The same with other steps. */
    ShopWork with(List<Step> others) {
        return new ShopWork(now, settings, rules, absences, urgency, house, others, diary);
    }

    BenchCalendar calendar() {
        return new BenchCalendar(rules, absences, settings.closesAt());
    }

    /** Those who work here: as many as a plan can tell apart. */
    List<String> hands() {
        return settings.hands().subList(0, Math.min(30, settings.hands().size()));
    }
}
