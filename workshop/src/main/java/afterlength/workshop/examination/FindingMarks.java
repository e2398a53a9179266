package afterlength.workshop.examination;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The marks of each finding; a mark names the wording it was drawn for, and the finding may have been corrected since. */
final class FindingMarks {
    private final Map<Long, List<DrawnMark>> byLatest = new HashMap<>();

    FindingMarks(List<History<Finding>> findings, List<DrawnMark> marks) {
        for (History<Finding> history : findings) {
            List<DrawnMark> own = new ArrayList<>();
            for (DrawnMark mark : marks) {
                Long named = mark.findingId();
                if (named != null && history.contains(named)) {
                    own.add(mark);
                }
            }
            byLatest.put(history.latest().id(), own);
        }
    }

    /** The marks of a finding by the id of its latest wording. */
    List<DrawnMark> of(Finding latest) {
        return byLatest.getOrDefault(latest.id(), List.of());
    }
}
