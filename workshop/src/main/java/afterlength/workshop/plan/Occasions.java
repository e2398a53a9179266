package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.work.DiaryEntry;
import afterlength.workshop.work.DiaryEvent;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.HouseVisit;
import io.javalin.http.Context;
import java.util.Optional;

/** Reads from an address what has happened, and says it in a sentence. */
final class Occasions {
    private final BenchPlans plans;
    private final DiaryStore diary;
    private final AbsenceStore absences;

    Occasions(BenchPlans plans, DiaryStore diary, AbsenceStore absences) {
        this.plans = plans;
        this.diary = diary;
        this.absences = absences;
    }

    Occasion read(Context context) {
        long entry = number(context, "entry");
        if (entry > 0) {
            return diary.find(entry).map(this::slipped).orElse(Occasion.BY_HAND);
        }
        long absence = number(context, "absence");
        if (absence > 0) {
            return away(absences.get(absence), "is away");
        }
        long back = number(context, "back");
        if (back > 0) {
            return away(absences.get(back), "is at the bench after all");
        }
        long visit = number(context, "visit");
        return visit > 0 ? urgent(visit) : Occasion.BY_HAND;
    }

    private Occasion slipped(DiaryEntry entry) {
        Double more = entry.writing().moreHours();
        String longer = more == null ? "" : " It waits " + Figures.plain(more) + " h more.";
        String what = entry.writing().what() == DiaryEvent.NOT_DRY ? "is not ready yet" : "was corrected";
        return new Occasion(
                "“" + entry.stepName() + "” on " + instrument(entry.writing().visitId()) + " " + what + "." + longer,
                entry.writing().visitId());
    }

    private static Occasion away(Absence absence, String what) {
        String days = absence.fromDay().equals(absence.toDay())
                ? "on " + Days.words(absence.fromDay())
                : "from " + Days.words(absence.fromDay()) + " to " + Days.words(absence.toDay());
        return new Occasion(absence.away() + " " + what + " " + days + ".", 0);
    }

    private Occasion urgent(long visit) {
        Urgency urgency = plans.work().urgency().getOrDefault(visit, Urgency.ORDINARY);
        Optional<HouseVisit> known = find(visit);
        String promise = known.map(HouseVisit::promisedOn)
                .map(day -> ", promised for " + Days.words(day))
                .orElse("");
        return new Occasion(instrument(visit) + " is wanted: " + urgency.words() + promise + ".", 0);
    }

    private String instrument(long visit) {
        return find(visit).map(HouseVisit::instrument).orElse("an instrument that has gone home");
    }

    private Optional<HouseVisit> find(long visit) {
        return plans.work().house().stream()
                .filter(one -> one.visitId() == visit)
                .findFirst();
    }

    private static long number(Context context, String name) {
        String text = context.queryParam(name);
        return text != null && text.matches("\\d{1,18}") ? Long.parseLong(text) : 0;
    }
}
