package afterlength.workshop.examination;

import java.util.List;
import java.util.Map;

/** Puts findings, their earlier wordings and their photographs together. */
final class FindingBook {
    private final FindingStore findings;
    private final PhotographStore photographs;

    FindingBook(FindingStore findings, PhotographStore photographs) {
        this.findings = findings;
        this.photographs = photographs;
    }

    List<FindingEntry> listNow(long visitId) {
        return list(visitId, true);
    }

    List<FindingEntry> listWithdrawn(long visitId) {
        return list(visitId, false);
    }

    private List<FindingEntry> list(long visitId, boolean holding) {
        List<Photograph> inView = photographs.list(visitId);
        Map<Long, List<Long>> seenOn = findings.photographs(visitId);
        return findings.listHistories(visitId).stream()
                .filter(history -> history.holds() == holding)
                .map(history -> entry(history, inView, seenOn))
                .toList();
    }

    private static FindingEntry entry(History<Finding> history, List<Photograph> inView, Map<Long, List<Long>> seenOn) {
        Finding latest = history.latest();
        List<Long> wanted = seenOn.getOrDefault(latest.id(), List.of());
        List<Photograph> seen = inView.stream()
                .filter(photograph -> wanted.contains(photograph.id()))
                .toList();
        return new FindingEntry(latest, seen, History.differing(latest, history.earlier(), Finding::words));
    }
}
