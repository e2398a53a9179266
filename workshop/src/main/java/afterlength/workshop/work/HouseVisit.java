package afterlength.workshop.work;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A visit that has not been handed over, as Today sees it.
 *
 * @param looked how many findings and measures are written down; a photograph taken at receipt is no examination
 * @param treatments how many treatments stand in the proposal
 * @param agreements how many agreements hold now
 */
public record HouseVisit(
        long visitId,
        long instrumentId,
        String instrument,
        String number,
        LocalDate receivedOn,
        @Nullable LocalDate promisedOn,
        int looked,
        int treatments,
        int agreements) {

    public String address() {
        return "/instruments/" + instrumentId + "#visit-" + visitId;
    }
}
