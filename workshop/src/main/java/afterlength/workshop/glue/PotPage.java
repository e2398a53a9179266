package afterlength.workshop.glue;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One batch: where it stands, what can be done with it, what was glued.
 *
 * @param visits the instruments in the house, by visit
 * @param takenOut the gluing that was just taken out, or null
 */
record PotPage(
        Frame frame,
        Pot pot,
        List<Choice> visits,
        Typed typed,
        Typed event,
        Instant now,
        @Nullable Gluing takenOut) {
    List<PotStage> next() {
        PotStage stage = pot.stage();
        if (stage == PotStage.ENDED) {
            return List.of();
        }
        return Stream.of(PotStage.WARMING, PotStage.HOT, PotStage.COLD, PotStage.ENDED)
                .filter(next -> next != stage)
                .toList();
    }

    /** The instrument of a gluing while it is in the house; empty otherwise. */
    String instrument(Gluing gluing) {
        return visits.stream()
                .filter(visit -> visit.value().equals(String.valueOf(gluing.visitId())))
                .map(Choice::words)
                .findFirst()
                .orElse("");
    }

    long secondsLeft() {
        Instant due = pot.due();
        return due == null ? 0 : Duration.between(now, due).toSeconds();
    }
}
