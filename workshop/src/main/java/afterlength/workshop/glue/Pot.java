package afterlength.workshop.glue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A batch with all that happened to it. */
public record Pot(GlueBatch batch, List<PotEvent> events, List<Gluing> gluings) {
    public Pot {
        events = List.copyOf(events);
        gluings = List.copyOf(gluings);
    }

    public PotStage stage() {
        return last().map(PotEvent::what).orElse(PotStage.SOAKING);
    }

    Optional<PotEvent> last() {
        return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
    }

    public @Nullable Instant due() {
        return stage() == PotStage.ENDED ? null : last().map(PotEvent::dueAt).orElse(null);
    }

    /** Glue that no joint has taken yet, grams; what stayed in the brush is not counted. */
    public double left_g() {
        double used_g = gluings.stream()
                .mapToDouble(gluing -> gluing.usedG() == null ? 0 : gluing.usedG())
                .sum();
        return Math.max(0, batch.dryG() + batch.waterG() - used_g);
    }

    /** How long it was hot before a moment, all warm times together: a working day is its whole life. */
    public Duration hotBefore(Instant moment) {
        Duration hot = Duration.ZERO;
        for (int n = 0; n < events.size(); n++) {
            if (events.get(n).what() == PotStage.HOT) {
                Instant until = n + 1 < events.size() ? events.get(n + 1).at() : moment;
                hot = hot.plus(Duration.between(events.get(n).at(), until));
            }
        }
        return hot.isNegative() ? Duration.ZERO : hot;
    }

    /** When a stage that begins now is over: the usual time, for a hot pot what is left of its working day. */
    Instant usualDue(PotStage next, Instant now) {
        Duration usual = Duration.ofMinutes(next.times(batch.flakes()).usual_min());
        if (next != PotStage.HOT) {
            return now.plus(usual);
        }
        Duration left = usual.minus(hotBefore(now));
        return now.plus(left.isNegative() ? Duration.ZERO : left);
    }
}
