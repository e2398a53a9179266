package afterlength.workshop.instrument;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * An instrument as a line of a list, with its latest visit.
 *
 * @param inAll how many instruments were found with it
 */
public record Listing(
        long id,
        String name,
        InstrumentKind kind,
        String owner,
        @Nullable String visitNumber,
        @Nullable LocalDate receivedOn,
        @Nullable LocalDate promisedOn,
        boolean inHouse,
        int inAll) {}
