package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import afterlength.sight.measure.Mark;
import afterlength.sight.measure.MarkAnswer;
import afterlength.sight.measure.MeasuredPhoto;
import java.util.List;
import java.util.Optional;

/** The points of a mark in millimetres on the axes of the card, x right, y down. */
final class MarkPlaces {
    private MarkPlaces() {}

    /** None where the photograph does not measure so far out. */
    static Optional<List<Point>> find(MeasuredPhoto photo, DrawnMark mark) {
        MarkAnswer answer = photo.measure(
                new Mark("mark", mark.tool().kind(), mark.points(), mark.arch().height(mark.heightMm())));
        if (answer instanceof MarkAnswer.Line line) {
            return Optional.of(line.places());
        }
        if (answer instanceof MarkAnswer.Area area) {
            return Optional.of(area.places());
        }
        return answer instanceof MarkAnswer.Place place ? Optional.of(List.of(place.place())) : Optional.empty();
    }
}
