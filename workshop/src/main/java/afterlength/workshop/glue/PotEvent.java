package afterlength.workshop.glue;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Something that was done to a batch. */
public record PotEvent(
        long id,
        long batchId,
        PotStage what,
        @Nullable Double potC,
        @Nullable Instant dueAt,
        String hand,
        Instant at) {}
