package afterlength.workshop.examination;

import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.sight.measure.CameraCalibration;
import afterlength.sight.measure.CardPicture;
import afterlength.sight.picture.CameraKey;
import java.util.List;
import java.util.Objects;

/** The gathered pictures of one camera, and what they give together. */
record GatheredCamera(CameraKey camera, List<GatheredPicture> pictures, LensCalibrationAnswer answer) {
    static GatheredCamera of(CameraKey camera, List<GatheredPicture> pictures) {
        List<CardPicture> seen = pictures.stream()
                .map(picture -> Objects.requireNonNull(picture.seen()))
                .toList();
        return new GatheredCamera(camera, List.copyOf(pictures), CameraCalibration.of(seen));
    }

    /** By which its form names it. */
    long id() {
        return pictures.get(0).id();
    }
}
