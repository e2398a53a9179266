package afterlength.workshop.examination;

import afterlength.sight.measure.CardPicture;
import afterlength.sight.measure.KnownLens;
import afterlength.sight.measure.LensSource;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.picture.CameraKey;
import java.util.Optional;

/** Which lens a photograph was measured with, and why not with a calibrated one. */
record LensLine(String words) {
    static LensLine of(MeasuredPhoto photo, CalibratedCameraStore cameras) {
        Optional<CalibratedCamera> used =
                photo.findKnownLens().map(KnownLens::id).map(cameras::get);
        return new LensLine(used.map(LensLine::used).orElseGet(() -> withoutCalibration(photo, cameras)));
    }

    private static String used(CalibratedCamera camera) {
        return "Lens of " + CameraWords.words(camera.camera()) + ": " + CameraWords.calibrated(camera)
                + "; what this card shows agrees with it.";
    }

    private static String withoutCalibration(MeasuredPhoto photo, CalibratedCameraStore cameras) {
        String source = photo.lensSource() == LensSource.NOTED
                ? "Lens: from this card and the focal length the file notes. "
                : "Lens: from this card alone. ";
        return source
                + photo.findCardPicture()
                        .map(CardPicture::camera)
                        .map(camera -> whyNot(camera, cameras))
                        .orElse(
                                "The file does not tell its camera as it took the picture, so that no calibration is looked for.");
    }

    private static String whyNot(CameraKey camera, CalibratedCameraStore cameras) {
        if (cameras.find(camera).isPresent()) {
            return "The calibration of this camera was tried and left out.";
        }
        return cameras.list().stream()
                .filter(one -> !one.putAside() && one.camera().sameCamera(camera))
                .findFirst()
                .map(other -> "This camera was calibrated for " + CameraWords.taking(other.camera())
                        + "; this picture was taken with " + CameraWords.taking(camera)
                        + ", to which that calibration does not apply.")
                .orElse("This camera (" + CameraWords.words(camera) + ") is not calibrated.");
    }
}
