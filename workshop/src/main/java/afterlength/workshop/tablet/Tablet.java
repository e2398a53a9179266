package afterlength.workshop.tablet;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A tablet that was paired.
 *
 * @param seenAt when it last asked for a page, to a quarter of an hour
 * @param shutOutAt since when it may not come in; null while it may
 */
record Tablet(
        long id,
        String name,
        Instant pairedAt,
        Instant seenAt,
        @Nullable Instant shutOutAt) {}
