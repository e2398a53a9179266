package afterlength.workshop.work;

import afterlength.workshop.desk.Frame;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

record TodayPage(
        Frame frame,
        Today today,
        BenchAhead.Ahead ahead,
        Sentence sentence,
        @Nullable Notice notice,
        List<String> hands,
        String hand,
        List<BenchTimer> timers,
        List<ComingCheck> checks) {

    boolean empty() {
        return today.places().isEmpty() && checks.isEmpty();
    }

    /** The step of the sentence, when one can be begun. */
    Place.@Nullable Ready next() {
        return today.findNext().orElse(null);
    }

    /** What can be begun, the step of the sentence first. */
    List<Place.Ready> readyNextFirst() {
        Place.Ready next = next();
        return today.ready().stream()
                .sorted(Comparator.comparing(one -> !one.equals(next)))
                .toList();
    }
}
