package afterlength.workshop.work;

import java.time.LocalDate;

/**
 * An instrument that went home and was to come again.
 *
 * @param visit number of the visit it went home from
 */
public record ComingCheck(
        long instrumentId, String instrument, String visit, LocalDate handedOverOn, LocalDate checkOn) {

    /** Where the instrument is received again. */
    public String address() {
        return "/instruments/" + instrumentId;
    }
}
