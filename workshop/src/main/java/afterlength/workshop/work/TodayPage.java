package afterlength.workshop.work;

import afterlength.workshop.desk.Frame;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

record TodayPage(
        Frame frame,
        Today today,
        Sentence sentence,
        @Nullable Notice notice,
        List<String> hands,
        String hand) {

    boolean empty() {
        return today.places().isEmpty();
    }

    /** The steps with buttons: those in hand, then those that can be begun, the one of the sentence first. */
    List<Place.Ready> readyNextFirst() {
        List<Place.Ready> ready = today.ready();
        Place.Ready next = today.findNext().orElse(null);
        return ready.stream()
                .sorted(Comparator.comparing(one -> !one.equals(next)))
                .toList();
    }
}
