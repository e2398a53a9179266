package afterlength.workshop.retouch;

import java.time.Instant;
import java.util.Optional;

/** The air a coat dries in, as a logger read it; the climate of the shop answers it, wired in {@code start}. */
@FunctionalInterface
public interface DryingAir {
    /** A shop without a logger. */
    DryingAir NOT_LOGGED = (from, to) -> Optional.empty();

    /** Mean over a time; empty when no logger covers most of it. */
    Optional<Mean> over(Instant from, Instant to);

    /** What a logger read over a time. */
    record Mean(double temperature_C, double humidity_pct) {}
}
