package afterlength.workshop.work;

import afterlength.workshop.desk.Frame;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

record WorkPage(
        Frame frame,
        long visitId,
        Sentence sentence,
        @Nullable Notice notice,
        List<StepLine> steps,
        List<Step> dropped,
        List<DiaryEntry> diary,
        Instant now) {

    /** Hands-on minutes the diary tells of. */
    int minutesDone() {
        return diary.stream()
                .map(entry -> entry.writing().minutes())
                .filter(minutes -> minutes != null)
                .mapToInt(Integer::intValue)
                .sum();
    }

    boolean outsideAgreement() {
        return steps.stream().anyMatch(line -> line.step().treatmentId() == null);
    }
}
