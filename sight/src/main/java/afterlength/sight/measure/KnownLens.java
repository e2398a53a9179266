package afterlength.sight.measure;

import afterlength.sight.camera.LensCalibrationAnswer;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.picture.CameraKey;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * A lens that was calibrated once, and what it is worth in a later picture. The calibration itself is sharper than a lens stays:
 * it is focused anew for every picture, a stabiliser moves it aside, the print was measured with a ruler. What is added for that
 * is an assumption (docs/sources.md#lens-at-work), but for the focus: a thin lens focused from one distance to another draws
 * larger or smaller by the difference of f / distance (docs/sources.md#thin-lens). Lenses of many glasses move less or otherwise;
 * so the whole difference is counted as a deviation, and nothing is corrected by it.
 *
 * @param id by which the asker knows it
 * @param asLaid in pixels of the picture as the sensor lay
 * @param focal_mm the noted focal length
 * @param nearest_mm of the pictures it was calibrated from, lens to card along the axis
 * @param usual_mm their harmonic mean
 */
public record KnownLens(
        long id, LensGuess asLaid, double focal_mm, double nearest_mm, double usual_mm, double farthest_mm) {
    private static final double FOCAL_SHARE = 0.002;
    private static final double K1 = 0.001;
    private static final double CENTRE_SHARE_OF_EDGE = 0.001;

    /** Beyond the calibrated distances by less than a third nothing is said. */
    private static final double FAR_SHARE = 4 / 3.0;

    /** The lens of a camera as a calibration found it. */
    public static KnownLens of(long id, CameraKey camera, LensCalibrationAnswer.Calibrated calibrated) {
        List<LensCalibrationAnswer.Seen> pictures = calibrated.pictures();
        double inverse = pictures.stream()
                .mapToDouble(picture -> 1 / picture.distance_mm())
                .average()
                .orElseThrow();
        DoubleSummaryStatistics distances = pictures.stream()
                .mapToDouble(LensCalibrationAnswer.Seen::distance_mm)
                .summaryStatistics();
        return new KnownLens(
                id, calibrated.lens(), camera.focal_mm(), distances.getMin(), 1 / inverse, distances.getMax());
    }

    /** The guess for a picture taken from this distance, as the upright picture shows the lens. */
    LensGuess at(double distance_mm, LaidPicture picture) {
        double breathing = focal_mm * Math.abs(1 / distance_mm - 1 / usual_mm);
        double aside_px = CENTRE_SHARE_OF_EDGE * Math.max(picture.width_px(), picture.height_px());
        LensGuess upright = picture.upright(asLaid);
        return new LensGuess(
                upright.logFocal().widened(Math.hypot(FOCAL_SHARE, breathing)),
                upright.k1().widened(K1),
                upright.centreX_px().widened(aside_px),
                upright.centreY_px().widened(aside_px));
    }

    boolean wasCalibratedFarFrom(double distance_mm) {
        return distance_mm < nearest_mm / FAR_SHARE || distance_mm > farthest_mm * FAR_SHARE;
    }
}
