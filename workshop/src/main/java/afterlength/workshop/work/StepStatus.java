package afterlength.workshop.work;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * Where a step stands, told from the diary alone. The last word counts: started means begun; done means waiting until the
 * usual wait is over, and finished from then on. “Not dry” written after it was done lengthens the wait from that time by the hours
 * asked for, and never shortens it. Notes change nothing.
 *
 * <p>The end of a wait is common practice running out, not a measurement: nobody has touched the joint.
 */
public sealed interface StepStatus {
    record NotBegun() implements StepStatus {}

    record Begun(Instant since) implements StepStatus {}

    record Waiting(Instant doneAt, Instant until) implements StepStatus {}

    record Finished(Instant doneAt, Instant freeAt) implements StepStatus {}

    /** Where the step stands at that time, knowing the entries that hold now in any order; later ones are not looked at. */
    static StepStatus of(Step step, List<DiaryEntry> entries, Instant at) {
        StepStatus status = new NotBegun();
        for (DiaryEntry entry : inOrder(step, entries, at)) {
            status = after(status, step, entry.writing());
        }
        return settled(status, at);
    }

    private static List<DiaryEntry> inOrder(Step step, List<DiaryEntry> entries, Instant at) {
        return entries.stream()
                .filter(entry -> entry.isAbout(step) && !entry.writing().at().isAfter(at))
                .sorted(Comparator.comparing(
                                (DiaryEntry entry) -> entry.writing().at())
                        .thenComparing(DiaryEntry::firstId))
                .toList();
    }

    private static StepStatus after(StepStatus before, Step step, Writing writing) {
        return switch (writing.what()) {
            case STARTED -> new Begun(writing.at());
            case DONE -> new Waiting(writing.at(), writing.at().plus(hours(step.waitTypicalH())));
            case NOT_DRY -> lengthened(before, writing);
            case NOTE -> before;
        };
    }

    private static StepStatus lengthened(StepStatus before, Writing writing) {
        if (before instanceof Waiting waiting && writing.moreHours() != null) {
            Instant asked = writing.at().plus(hours(writing.moreHours()));
            return asked.isAfter(waiting.until()) ? new Waiting(waiting.doneAt(), asked) : waiting;
        }
        return before;
    }

    private static StepStatus settled(StepStatus status, Instant at) {
        return status instanceof Waiting waiting && !waiting.until().isAfter(at)
                ? new Finished(waiting.doneAt(), waiting.until())
                : status;
    }

    /** Exact hours of elapsed time, also across a change of the clocks. */
    private static Duration hours(double hours) {
        return Duration.ofSeconds(Math.round(hours * 3600));
    }
}
