package afterlength.workshop.retouch;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A batch of varnish in the book. What went into it does not change; another mixture is another batch. */
public record Varnish(
        long id,
        String name,
        @Nullable LocalDate madeOn,
        String remark,
        boolean putAway,
        Instant writtenAt,
        String hand) {}
