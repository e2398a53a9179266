package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Says what the points of a form measure, while they are being set. Nothing here is a problem yet: the next point may mend it. */
final class MarkReadings {
    private static final ReadingPart BEGIN =
            new ReadingPart("", "Choose what is marked, then set points along it.", "");

    private final CardSearches searches;

    MarkReadings(CardSearches searches) {
        this.searches = searches;
    }

    ReadingPart of(Typed typed, MarkGround ground) {
        MarkTool tool = typed.choice("tool", "What is marked", MarkTool.class);
        long count = typed.raw(MarkPoints.FIELD)
                .lines()
                .filter(line -> !line.isBlank())
                .count();
        if (count == 0 || tool == null) {
            return BEGIN;
        }
        if (count < tool.kind().fewest()) {
            return new ReadingPart("", points((int) count) + "; set the next one.", "");
        }
        DrawnMark mark = MarkForm.read(typed, ground, List.of(), null, Instant.EPOCH);
        List<Pixel> points = mark.selector().isEmpty() ? List.of() : mark.points();
        return points.isEmpty()
                ? new ReadingPart("", typed.problem(MarkPoints.FIELD).orElse(""), "")
                : placed(mark, points, ground);
    }

    private ReadingPart placed(DrawnMark mark, List<Pixel> points, MarkGround ground) {
        Photograph photograph = ground.photograph();
        if (photograph == null) {
            return new ReadingPart(
                    "", points(points.size()) + ".", "A drawing tells the place of a finding and no millimetres.");
        }
        CardSearch search = searches.of(photograph);
        Optional<MeasuredPhoto> photo = search.findMeasured();
        if (photo.isEmpty()) {
            return new ReadingPart(
                    "",
                    points(points.size()) + ".",
                    search.working()
                            ? "Millimetres follow when the card is found."
                            : "No millimetres: no card was found in this picture.");
        }
        MarkReading reading =
                MarkReading.of(photo.get(), mark.tool(), points, mark.arch().height(mark.heightMm()));
        return new ReadingPart(reading.size().words(), points(points.size()) + ".", reading.reason());
    }

    private static String points(int count) {
        return Counted.words(count, "point", "points") + " set";
    }
}
