package afterlength.workshop.tablet;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The one code that stands on the shop's screen: good for one tablet and ten minutes, and gone after five wrong guesses. Five guesses
 * at eight digits hit once in twenty million codes.
 */
final class PairingCode {
    static final Duration GOOD_FOR = Duration.ofMinutes(10);
    private static final int MOST_GUESSES = 5;

    private String code = "";
    private Instant until = Instant.EPOCH;
    private int guesses;

    synchronized String issue(Instant now) {
        code = Secret.code();
        until = now.plus(GOOD_FOR);
        guesses = 0;
        return code;
    }

    /** The code while it is good. */
    synchronized Optional<String> find(Instant now) {
        return code.isEmpty() || now.isAfter(until) ? Optional.empty() : Optional.of(code);
    }

    /** Whether the guess is the code; a right guess uses it up. */
    synchronized boolean redeem(String guess, Instant now) {
        boolean right = find(now).isPresent() && Secret.same(code, guess.replaceAll("\\s", ""));
        guesses++;
        if (right || guesses >= MOST_GUESSES) {
            code = "";
        }
        return right;
    }
}
