package afterlength.workshop.retouch;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A line before it was mended and afterwards, read from two photographs.
 *
 * @param place which line, in the restorer's words
 */
public record MendedLine(
        long id,
        long visitId,
        @Nullable Long replaces,
        boolean withdrawn,
        String place,
        LineSight before,
        LineSight after,
        Instant writtenAt,
        String hand) {

    MendedLine again(boolean nowWithdrawn, Instant at) {
        return new MendedLine(0, visitId, id, nowWithdrawn, place, before, after, at, hand);
    }

    /** "From ΔE00 6.2 ± 0.5, visible, to 1.2 ± 0.4, found by who searches." */
    public String answer() {
        return MendedLineWords.answer(this);
    }

    /** What the answer is worth, in one sentence. */
    public String limits() {
        return MendedLineWords.LIMITS;
    }
}
