package afterlength.workshop.examination;

import afterlength.sight.camera.Guess;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.measure.KnownLens;
import afterlength.sight.picture.CameraKey;
import java.time.Instant;

/** A calibration as it lies in the database, one value a column. */
public record CalibrationRow(
        long id,
        String camera,
        String lens,
        double focalMm,
        double focal35Mm,
        int widthPx,
        int heightPx,
        double logFocal,
        double logFocalDeviation,
        double k1,
        double k1Deviation,
        double centreXPx,
        double centreXDeviationPx,
        double centreYPx,
        double centreYDeviationPx,
        double nearestMm,
        double usualMm,
        double farthestMm,
        double residualPx,
        String hand,
        Instant writtenAt,
        boolean putAside) {
    static CalibrationRow of(CalibratedCamera one) {
        CameraKey camera = one.camera();
        LensGuess lens = one.asLaid();
        return new CalibrationRow(
                0,
                camera.camera(),
                camera.lens(),
                camera.focal_mm(),
                camera.focal35_mm(),
                camera.width_px(),
                camera.height_px(),
                lens.logFocal().value(),
                lens.logFocal().deviation(),
                lens.k1().value(),
                lens.k1().deviation(),
                lens.centreX_px().value(),
                lens.centreX_px().deviation(),
                lens.centreY_px().value(),
                lens.centreY_px().deviation(),
                one.lens().nearest_mm(),
                one.lens().usual_mm(),
                one.lens().farthest_mm(),
                one.residualPx(),
                one.hand(),
                one.writtenAt(),
                false);
    }

    CameraKey key() {
        return new CameraKey(camera, lens, focalMm, focal35Mm, widthPx, heightPx);
    }

    KnownLens known() {
        LensGuess guess = new LensGuess(
                new Guess(logFocal, logFocalDeviation),
                new Guess(k1, k1Deviation),
                new Guess(centreXPx, centreXDeviationPx),
                new Guess(centreYPx, centreYDeviationPx));
        return new KnownLens(id, guess, focalMm, nearestMm, usualMm, farthestMm);
    }
}
