package afterlength.workshop.tablet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;

/** Counts wrong guesses at the door, whoever makes them: after twenty in a quarter of an hour nobody is heard for the rest of it. */
final class Guesses {
    private static final int MOST = 20;
    private static final Duration IN = Duration.ofMinutes(15);

    private final Deque<Instant> wrong = new ArrayDeque<>();

    synchronized boolean tooMany(Instant now) {
        while (!wrong.isEmpty() && wrong.peekFirst().isBefore(now.minus(IN))) {
            wrong.removeFirst();
        }
        return wrong.size() >= MOST;
    }

    synchronized void note(Instant now) {
        wrong.addLast(now);
    }
}
