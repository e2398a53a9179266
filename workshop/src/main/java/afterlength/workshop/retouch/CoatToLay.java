package afterlength.workshop.retouch;

import java.time.Instant;
import java.util.List;

/**
 * A coat as it is written down.
 *
 * @param words what was mixed, for the diary
 */
public record CoatToLay(
        long retouchId,
        List<CoatPart> parts,
        String words,
        String isolating,
        String reversibleWith,
        String remark,
        Instant laidAt,
        String hand) {
    public CoatToLay {
        parts = List.copyOf(parts);
    }
}
