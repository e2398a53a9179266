package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The examination workbench: the findings so far beside the form for the next one.
 *
 * @param justWithdrawn what can be brought back with one touch, or null
 * @param sittingJustWithdrawn the same for how it was looked at
 */
record ExaminationPage(
        Frame frame,
        long visitId,
        List<FindingEntry> findings,
        List<FindingEntry> withdrawn,
        @Nullable Finding justWithdrawn,
        List<Sitting> sittings,
        @Nullable Sitting sittingJustWithdrawn,
        FindingFields fields,
        FindingMarks marks) {

    String answer() {
        return ExaminationWords.answer(
                findings.stream().map(FindingEntry::finding).toList());
    }

    Typed typed() {
        return fields.typed();
    }
}
