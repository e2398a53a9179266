package afterlength.workshop.retouch;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A coat of a retouch that was laid.
 *
 * @param isolating what lies between it and the original varnish
 * @param parts how much of each colour, in coats of the palette
 * @param reading what the place looked like afterwards, once it was measured
 */
record LaidCoat(
        long id,
        long diaryId,
        String isolating,
        String reversibleWith,
        Instant laidAt,
        String hand,
        List<CoatPart> parts,
        Optional<ColourReading> reading) {
    LaidCoat {
        parts = List.copyOf(parts);
    }

    double coats() {
        return parts.stream().mapToDouble(CoatPart::coats).sum();
    }
}
