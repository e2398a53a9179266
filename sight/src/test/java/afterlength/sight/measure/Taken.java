package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.Scene;
import java.util.List;

/** Short ways for the tests to measure in a rendered photograph. */
final class Taken {
    static final Print EXACT = Print.checked(100, 100);

    private Taken() {}

    static PhotoAnswer answer(byte[] file, String card) {
        return PhotoMeasuring.of(new PictureFile("photo.jpg", file), PhotoRequest.of(card, EXACT), Progress.SILENT);
    }

    static String refusal(byte[] file, String card) {
        return ((PhotoAnswer.Refused) answer(file, card)).reason();
    }

    static MeasuredPhoto measured(byte[] file, String card) {
        PhotoAnswer answer = answer(file, card);
        if (answer instanceof MeasuredPhoto photo) {
            return photo;
        }
        throw new AssertionError("not measured: " + answer);
    }

    /** A line between two places of the card's plane, marked where the scene shows them. */
    static Mark line(Scene scene, Point from, Point to, double trueHeight_mm, Height height) {
        List<Pixel> ends =
                List.of(scene.view().pixel(from, trueHeight_mm), scene.view().pixel(to, trueHeight_mm));
        return new Mark("line", MarkKind.LINE, ends, height);
    }

    static MarkAnswer.Line length(MeasuredPhoto photo, Mark mark) {
        return (MarkAnswer.Line) photo.measure(mark);
    }
}
