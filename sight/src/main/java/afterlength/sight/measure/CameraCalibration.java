package afterlength.sight.measure;

import afterlength.sight.camera.LensCalibration;
import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Sighting;
import afterlength.sight.picture.CameraKey;
import java.util.List;

/** Calibrates a camera from pictures of a card that it took; they may be held in different ways. */
public final class CameraCalibration {
    private CameraCalibration() {}

    /**
     * Solves the lens, in the picture as the sensor lay, or says why not.
     *
     * @throws IllegalArgumentException when two pictures are of different cameras
     */
    public static LensCalibrationAnswer of(List<CardPicture> pictures) {
        if (pictures.isEmpty()) {
            return LensCalibration.of(List.of(), LensGuess.ofCropped(1, 1));
        }
        CardPicture first = pictures.get(0);
        CameraKey camera = first.camera();
        if (pictures.stream().anyMatch(picture -> !picture.camera().equals(camera))) {
            throw new IllegalArgumentException("pictures of different cameras make no calibration of " + camera);
        }
        if (!pictures.stream().allMatch(CardPicture::checkedPrint)) {
            return new LensCalibrationAnswer.Refused(
                    "The check lines of the card in these pictures were not measured. Measure both"
                            + " with a steel rule and keep them; a print that is off across and along by different shares would become a"
                            + " wrong focal length.");
        }
        List<List<Sighting>> sightings =
                pictures.stream().map(CardPicture::asLaid).toList();
        return LensCalibration.of(sightings, LensGuess.of(camera.width_px(), camera.height_px(), first.noted_px()));
    }
}
