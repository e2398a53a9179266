package afterlength.workshop.agreement;

import afterlength.workshop.examination.FindingStore;
import java.util.List;

/** The findings of a visit that hold now, as this stage reads them: the one place where it asks the stage before. */
public final class FindingLines {
    private final FindingStore findings;

    public FindingLines(FindingStore findings) {
        this.findings = findings;
    }

    public List<FindingLine> listNow(long visitId) {
        return findings.listNow(visitId).stream().map(FindingLine::of).toList();
    }
}
