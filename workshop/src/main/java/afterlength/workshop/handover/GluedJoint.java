package afterlength.workshop.handover;

import java.time.Instant;

/**
 * A joint that was glued, as a report tells it; words are empty where nothing was written down.
 *
 * @param glue which batch, how strong
 * @param air of the room at that moment, and where it was read
 */
public record GluedJoint(
        Instant at, String joint, String glue, String air, String clamped, String remark, String hand) {}
