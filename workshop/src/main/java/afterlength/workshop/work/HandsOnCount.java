package afterlength.workshop.work;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Hands-on minutes counted from start to done, rounded to whole minutes. A stretch that holds a night is not counted: nobody worked
 * through it, and the person is asked instead.
 */
final class HandsOnCount {
    /** Longer than a long working day; our own rule. */
    static final Duration LONGEST = Duration.ofHours(10);

    private HandsOnCount() {}

    static @Nullable Integer between(Instant start, Instant done) {
        Duration worked = Duration.between(start, done);
        return worked.isNegative() || worked.compareTo(LONGEST) > 0
                ? null
                : Math.toIntExact(Math.round(worked.toSeconds() / 60.0));
    }

    /** Counted from where the step stands; null when it was not begun. */
    static @Nullable Integer from(StepStatus before, Instant done) {
        return before instanceof StepStatus.Begun begun ? between(begun.since(), done) : null;
    }
}
