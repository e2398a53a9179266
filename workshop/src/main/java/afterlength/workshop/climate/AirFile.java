package afterlength.workshop.climate;

import java.time.Instant;
import java.util.List;

/**
 * A logger file that was taken in.
 *
 * @param sha256 names the untouched file in the shop's folder
 * @param place where the logger hung, in the shop's words
 * @param rowCount rows below the heading
 * @param rejected every row that is not counted, one entry a line
 */
public record AirFile(
        long id,
        String name,
        String sha256,
        String place,
        int rowCount,
        int readings,
        long fromS,
        long toS,
        String rejected,
        String notes,
        boolean putAway,
        String hand,
        Instant takenAt) {

    List<String> rejectedLines() {
        return rejected.lines().toList();
    }

    List<String> noteLines() {
        return notes.lines().toList();
    }

    Instant from() {
        return Instant.ofEpochSecond(fromS);
    }

    Instant to() {
        return Instant.ofEpochSecond(toS);
    }
}
