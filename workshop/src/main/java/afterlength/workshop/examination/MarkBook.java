package afterlength.workshop.examination;

import afterlength.sight.measure.MeasuredPhoto;
import afterlength.workshop.desk.InstrumentView;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts marks, the findings they belong to and what they measure together. */
public final class MarkBook {
    private final MarkStore marks;
    private final FindingStore findings;
    private final CardSearches searches;

    public MarkBook(MarkStore marks, FindingStore findings, CardSearches searches) {
        this.marks = marks;
        this.findings = findings;
        this.searches = searches;
    }

    List<MarkEntry> list(MarkGround ground) {
        Map<Long, Finding> holding = holdingByEntry(findings, ground.visitId());
        return marksOn(ground).stream()
                .map(mark -> new MarkEntry(mark, findingOf(mark, holding), measured(mark, ground)))
                .toList();
    }

    MarkEntry entry(DrawnMark mark, MarkGround ground) {
        return new MarkEntry(mark, findingOf(mark, holdingByEntry(findings, mark.visitId())), measured(mark, ground));
    }

    private List<DrawnMark> marksOn(MarkGround ground) {
        Photograph photograph = ground.photograph();
        InstrumentView view = ground.view();
        if (photograph != null) {
            return marks.listOnPhotograph(ground.visitId(), photograph.id());
        }
        return view == null ? List.of() : marks.listOnDrawing(ground.visitId(), view);
    }

    static @Nullable Finding findingOf(DrawnMark mark, Map<Long, Finding> holding) {
        Long id = mark.findingId();
        return id == null ? null : holding.get(id);
    }

    /** What the mark measures now; nothing where no card was found, or not yet. */
    MarkSize measured(DrawnMark mark, MarkGround ground) {
        return findMeasured(ground)
                .map(photo -> MarkReading.of(
                                photo, mark.tool(), mark.points(), mark.arch().height(mark.heightMm()))
                        .size())
                .orElse(MarkSize.NONE);
    }

    Optional<MeasuredPhoto> findMeasured(MarkGround ground) {
        Photograph photograph = ground.photograph();
        return photograph == null ? Optional.empty() : searches.findMeasured(photograph);
    }

    /** A mark names the wording it was drawn for; the finding may have been corrected since. */
    static Map<Long, Finding> holdingByEntry(FindingStore findings, long visitId) {
        Map<Long, Finding> holding = new HashMap<>();
        for (History<Finding> history : findings.listHistories(visitId)) {
            if (history.holds()) {
                history.entries().forEach(entry -> holding.put(entry.id(), history.latest()));
            }
        }
        return holding;
    }
}
