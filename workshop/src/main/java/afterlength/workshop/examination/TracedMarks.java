package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import afterlength.sight.measure.Height;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Marks on measured photographs, for the stages that reckon with them. */
public final class TracedMarks {
    private final PhotographStore photographs;
    private final MarkStore marks;
    private final CardSearches searches;

    public TracedMarks(PhotographStore photographs, MarkStore marks, CardSearches searches) {
        this.photographs = photographs;
        this.marks = marks;
        this.searches = searches;
    }

    /** The marks of a visit that are measured by now, in the order of drawing; looking for missing cards begins. */
    public List<TracedMark> list(long visitId) {
        List<TracedMark> traced = new ArrayList<>();
        for (DrawnMark mark : marks.listNow(visitId)) {
            find(mark).ifPresent(traced::add);
        }
        return traced;
    }

    public Optional<TracedMark> find(long visitId, long markId) {
        return marks.listNow(visitId).stream()
                .filter(mark -> mark.id() == markId)
                .findFirst()
                .flatMap(this::find);
    }

    /** Whether a card is still looked for in a photograph of the visit that has marks. */
    public boolean isWorking(long visitId) {
        return marks.listNow(visitId).stream()
                .map(DrawnMark::photographId)
                .filter(java.util.Objects::nonNull)
                .distinct()
                .map(photographs::get)
                .anyMatch(photograph -> searches.of(photograph).working());
    }

    /** How a measured photograph lies in its rectified picture. */
    public Optional<FlatSheet> findSheet(long photographId, double height_mm) {
        return searches.findMeasured(photographs.get(photographId))
                .map(photo -> FlatSheet.of(photographId, photo, height_mm));
    }

    private Optional<TracedMark> find(DrawnMark mark) {
        Long photographId = mark.photographId();
        if (photographId == null) {
            return Optional.empty();
        }
        Photograph photograph = photographs.get(photographId);
        Height height = mark.arch().height(mark.heightMm());
        Optional<List<Point>> places = searches.findMeasured(photograph).flatMap(photo -> MarkPlaces.find(photo, mark));
        return places.map(found -> new TracedMark(
                mark.id(),
                mark.tool(),
                photograph,
                mark.about() + ", in " + photograph.title() + (mark.remark().isEmpty() ? "" : ": " + mark.remark()),
                height.mm(),
                found));
    }
}
