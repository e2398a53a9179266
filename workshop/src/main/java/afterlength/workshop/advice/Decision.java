package afterlength.workshop.advice;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What the restorer decided about a finding, and why. Never changed: another decision is a new one that names the one it replaces.
 *
 * @param findingId the finding as it was worded when this was decided
 * @param treatment key of a treatment template, or {@link AdviceRule#LEAVE}
 * @param title the words of the treatment at that time
 */
public record Decision(
        long id,
        long visitId,
        long findingId,
        @Nullable Long replaces,
        String treatment,
        String title,
        String reason,
        String hand,
        Instant writtenAt) {}
