package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.work.HouseVisit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of a wish: which instruments would be ready on another day. */
record WishAnswer(String words, List<String> sooner, List<String> later, boolean planned) {
    static WishAnswer of(Wish wish, CheckedPlan as_is, PlanAnswer answer, BenchCalendar calendar) {
        if (!(answer instanceof PlanAnswer.Planned planned)) {
            return new WishAnswer(wish.words(), List.of(), List.of(), false);
        }
        List<String> sooner = new ArrayList<>();
        List<String> later = new ArrayList<>();
        for (HouseVisit visit : as_is.bench().visits()) {
            Optional<Instant> before = as_is.findReady(visit.visitId());
            Optional<Instant> then = planned.plan().findReady(visit.visitId());
            if (before.isPresent()
                    && then.isPresent()
                    && !Days.day(before.get()).equals(Days.day(then.get()))) {
                String words = visit.instrument() + " " + PlanWords.day(calendar.readyDay(then.get())) + " instead of "
                        + PlanWords.day(calendar.readyDay(before.get()));
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
