package afterlength.start.verbs;

import afterlength.sight.camera.FittedView;
import afterlength.sight.camera.Lens;
import afterlength.sight.camera.Pixel;
import afterlength.sight.measure.Caveat;
import afterlength.sight.measure.Height;
import afterlength.sight.measure.Mark;
import afterlength.sight.measure.MarkAnswer;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.Terms;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.Figure;
import afterlength.start.document.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the marks of a document measure in a photograph. */
public final class MeasureReply {
    private final MeasureDocument document;
    private final MeasuredPhoto photo;

    private MeasureReply(MeasureDocument document, MeasuredPhoto photo) {
        this.document = document;
        this.photo = photo;
    }

    /** The reply; every mark that lies outside the picture is a problem of the document. */
    public static Reply of(MeasureDocument document, MeasuredPhoto photo) {
        return new MeasureReply(document, photo).reply();
    }

    private Reply reply() {
        List<Mark> marks = document.marks();
        for (int n = 0; n < marks.size(); n++) {
            refuseOutside(n, marks.get(n));
        }
        if (document.document().hasProblems()) {
            return new Reply.Refused(document.document().problems());
        }
        return new Reply.Answered(new AnswerDocument()
                .put("card", photo.card().word())
                .putObjects("marks", marks.stream().map(this::measured).toList())
                .put("fit", fit(photo.fitted()))
                .putTexts("caveats", caveats(marks)));
    }

    private void refuseOutside(int index, Mark mark) {
        for (int n = 0; n < mark.pixels().size(); n++) {
            Pixel pixel = mark.pixels().get(n);
            if (pixel.x() > photo.width_px() || pixel.y() > photo.height_px()) {
                String shown = "(" + Figure.spoken(pixel.x()) + ", " + Figure.spoken(pixel.y()) + ")";
                document.document()
                        .refuse(
                                "/marks/" + index + "/pixels/" + n,
                                shown,
                                "The point " + shown + " of \"" + mark.id() + "\" lies outside the picture, which is "
                                        + photo.width_px() + " × " + photo.height_px()
                                        + " pixels upright. Count from its upper left corner.");
            }
        }
    }

    private AnswerDocument measured(Mark mark) {
        MarkAnswer answer = photo.measure(mark);
        AnswerDocument out = new AnswerDocument()
                .put("id", mark.id())
                .put("kind", mark.kind().word())
                .put("height_mm", mark.height().mm());
        if (answer instanceof MarkAnswer.Line line) {
            return out.put("length_mm", line.length_mm())
                    .put("plus_minus_mm", line.terms_mm().plusMinus())
                    .put("terms_mm", terms(line.terms_mm()));
        } else if (answer instanceof MarkAnswer.Area area) {
            return out.put("area_mm2", area.area_mm2())
                    .put("plus_minus_mm2", area.terms_mm2().plusMinus())
                    .put("outline_mm", area.outline_mm())
                    .put("terms_mm2", terms(area.terms_mm2()));
        } else if (answer instanceof MarkAnswer.Place place) {
            return out.put("x_mm", place.place().x_mm())
                    .put("y_mm", place.place().y_mm())
                    .put("plus_minus_mm", place.terms_mm().plusMinus())
                    .put("terms_mm", terms(place.terms_mm()));
        }
        return out.put("not_measured", ((MarkAnswer.NotMeasured) answer).reason());
    }

    /** Each as one standard deviation; the ± is twice their root sum of squares. */
    private static AnswerDocument terms(Terms terms) {
        return new AnswerDocument()
                .put("picking", terms.picking())
                .put("card", terms.card())
                .put("height", terms.height())
                .put("print", terms.print());
    }

    private static AnswerDocument fit(FittedView fitted) {
        Lens lens = fitted.view().lens();
        return new AnswerDocument()
                .put("corners", fitted.corners())
                .put("residual_px", fitted.residual_px())
                .put("tilt_deg", fitted.view().tilt_deg())
                .put("camera_height_mm", fitted.view().cameraHeight_mm())
                .put("focal_px", lens.focal_px())
                .put("k1", lens.k1());
    }

    private List<String> caveats(List<Mark> marks) {
        List<String> caveats = new ArrayList<>();
        photo.caveats().stream().map(Caveat::text).forEach(caveats::add);
        unknownHeights(marks).ifPresent(caveats::add);
        caveats.add(
                "A length is that of the mark seen from above the card: along a slope of 10° the surface is 1.5 % longer, of"
                        + " 20° 6.4 %.");
        return caveats;
    }

    private static Optional<String> unknownHeights(List<Mark> marks) {
        long unknown = marks.stream()
                .filter(mark -> mark.height().equals(Height.UNKNOWN))
                .count();
        return unknown == 0
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%d of %d marks have no height over the card; %.0f mm up or down are counted. Give height or height_mm.",
                        unknown,
                        marks.size(),
                        Height.UNKNOWN_MM));
    }
}
