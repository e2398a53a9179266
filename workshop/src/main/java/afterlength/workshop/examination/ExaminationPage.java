package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The examination workbench: the findings so far beside the form for the next one.
 *
 * @param justWithdrawn what can be brought back with one touch, or null
 */
record ExaminationPage(
        Frame frame,
        long visitId,
        List<FindingEntry> findings,
        List<FindingEntry> withdrawn,
        @Nullable Finding justWithdrawn,
        FindingFields fields) {

    String answer() {
        return ExaminationWords.answer(
                findings.stream().map(FindingEntry::finding).toList());
    }

    Typed typed() {
        return fields.typed();
    }
}
