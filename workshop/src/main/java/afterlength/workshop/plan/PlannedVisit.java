package afterlength.workshop.plan;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When a visit is ready by a plan, and what the owner was promised as the plan was taken.
 *
 * @param promisedBefore the promise until then, or null
 * @param promisedOn the promise from then on, or null
 */
public record PlannedVisit(
        long visitId,
        Instant readyAt,
        @Nullable LocalDate promisedBefore,
        @Nullable LocalDate promisedOn) {}
