package afterlength.workshop.examination;

import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.measure.KnownLens;
import afterlength.sight.picture.CameraKey;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A camera whose lens was solved from several pictures of a card.
 *
 * @param lens in the picture as the sensor lay, with what it is worth
 * @param residualPx root of the mean square over the corners of all pictures
 * @param putAside no longer used for measuring
 */
public record CalibratedCamera(
        CameraKey camera,
        KnownLens lens,
        double residualPx,
        List<CalibrationPicture> pictures,
        String hand,
        Instant writtenAt,
        boolean putAside) {
    public CalibratedCamera {
        pictures = List.copyOf(pictures);
    }

    /** A fresh one, from what was gathered and what was solved from it, both in one order. */
    static CalibratedCamera of(
            CameraKey camera,
            LensCalibrationAnswer.Calibrated solved,
            List<GatheredPicture> gathered,
            String hand,
            Instant now) {
        List<CalibrationPicture> pictures = new ArrayList<>();
        for (int n = 0; n < gathered.size(); n++) {
            LensCalibrationAnswer.Seen seen = solved.pictures().get(n);
            pictures.add(new CalibrationPicture(
                    gathered.get(n).sha256(),
                    gathered.get(n).corners(),
                    seen.residual_px(),
                    seen.tilt_deg(),
                    seen.distance_mm()));
        }
        return new CalibratedCamera(
                camera, KnownLens.of(0, camera, solved), solved.residual_px(), pictures, hand, now, false);
    }

    public long id() {
        return lens.id();
    }

    LensGuess asLaid() {
        return lens.asLaid();
    }
}
