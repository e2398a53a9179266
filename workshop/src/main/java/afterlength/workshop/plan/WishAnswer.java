package afterlength.workshop.plan;

import afterlength.workshop.work.HouseVisit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of a wish: which instruments would be ready on another day. */
record WishAnswer(String words, List<String> sooner, List<String> later, boolean planned) {
    static WishAnswer of(Wish wish, CheckedPlan asIs, PlanAnswer answer, BenchCalendar calendar) {
        if (!(answer instanceof PlanAnswer.Planned planned)) {
            return new WishAnswer(wish.words(), List.of(), List.of(), false);
        }
        List<String> sooner = new ArrayList<>();
        List<String> later = new ArrayList<>();
        for (HouseVisit visit : asIs.bench().visits()) {
            Optional<LocalDate> before = asIs.findReady(visit.visitId()).map(calendar::readyDay);
            Optional<LocalDate> then = planned.plan().findReady(visit.visitId()).map(calendar::readyDay);
            if (before.isPresent() && then.isPresent() && !before.equals(then)) {
                String words = visit.instrument() + " " + PlanWords.day(then.get()) + " instead of "
                        + PlanWords.day(before.get());
                (then.get().isBefore(before.get()) ? sooner : later).add(words);
            }
        }
        return new WishAnswer(wish.words(), sooner, later, true);
    }

    String sentence() {
        if (!planned) {
            return "No plan was found for it.";
        }
        if (sooner.isEmpty() && later.isEmpty()) {
            return "Nothing was found that is ready on another day.";
        }
        return (sooner.isEmpty() ? "" : "Ready sooner: " + String.join("; ", sooner) + ". ")
                + (later.isEmpty() ? "" : "Later, for the sake of the whole: " + String.join("; ", later) + ".");
    }
}
