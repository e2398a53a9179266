package afterlength.workshop.work;

import java.time.Duration;
import java.time.Instant;
import org.jdbi.v3.core.mapper.Nested;
import org.jspecify.annotations.Nullable;

/**
 * A diary entry as it is kept; never changed afterwards.
 *
 * @param replaces the entry this one corrects, if any
 * @param withdrawn whether this row only takes the one it replaces out of the diary
 * @param stepName name of the step it is about, empty without one
 * @param firstId the entry this one goes back to through all corrections; itself when there was none
 * @param firstWrittenAt when that first one was written
 */
public record DiaryEntry(
        long id,
        @Nullable Long replaces,
        boolean withdrawn,
        String stepName,
        Instant writtenAt,
        long firstId,
        Instant firstWrittenAt,
        @Nested Writing writing) {

    /** An entry first written longer than this after the work it tells is marked as late. Our own rule. */
    static final Duration LATE = Duration.ofHours(12);

    public boolean late() {
        return firstWrittenAt.isAfter(writing.at().plus(LATE));
    }

    public boolean corrected() {
        return replaces != null;
    }

    boolean isAbout(Step step) {
        return writing.stepId() != null && writing.stepId() == step.id();
    }
}
