package afterlength.workshop.handover;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * An instrument given back. A correction replaces an earlier entry; both stay.
 *
 * @param leftAsItWas what was seen and left on purpose
 * @param returnedParts old parts given back: bridge, strings, splinters
 */
public record Handover(
        long id,
        long visitId,
        LocalDate handedOverOn,
        String receivedBy,
        String leftAsItWas,
        String care,
        String returnedParts,
        @Nullable LocalDate nextCheckOn,
        Instant writtenAt,
        String hand) {}
