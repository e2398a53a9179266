package afterlength.sight.measure;

import afterlength.sight.camera.FittedView;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Sighting;
import afterlength.sight.camera.ViewFit;
import afterlength.sight.picture.CameraNotes;
import afterlength.sight.picture.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which earlier knowledge of the lens the fit may lean on: a calibration of this camera, what the file notes, or nothing. Each is
 * first tried against the card alone: when the two lie further apart than their uncertainties allow, the knowledge is dropped and
 * the person is told.
 *
 * @param fitted the view, solved with the chosen knowledge
 * @param guess that knowledge
 * @param known the calibration that was used
 */
record LensChoice(
        FittedView fitted, LensGuess guess, LensSource source, Optional<KnownLens> known, List<Caveat> caveats) {
    /** Noted and seen focal length may differ by so many of their joint deviations. */
    private static final double CONTRADICTION = 3;

    /** A calibrated lens has four numbers; the square of 4 is what chi-square with four degrees exceeds once in 330 (the table). */
    private static final double CALIBRATION_CONTRADICTION = 4;

    /** Below this tilt a plane hardly tells the focal length (docs/sources.md#photo-study). */
    private static final double TELLING_TILT_DEG = 10;

    static LensChoice of(Picture picture, Optional<KnownLens> known, List<Sighting> sightings, Print print) {
        return known.isPresent() ? calibrated(picture, known.get(), sightings, print) : noted(picture, sightings);
    }

    private static LensChoice calibrated(Picture picture, KnownLens known, List<Sighting> sightings, Print print) {
        LaidPicture laid = LaidPicture.of(picture);
        FittedView near = ViewFit.of(sightings, known.at(known.usual_mm(), laid));
        double distance_mm = near.view().axisDistance_mm();
        LensGuess guess = known.at(distance_mm, laid);
        FittedView fitted = ViewFit.of(sightings, guess);
        boolean unlike = distance(picture, sightings, guess, print) > CALIBRATION_CONTRADICTION
                || fitted.residual_px() > PhotoMeasuring.LARGEST_RESIDUAL_PX;
        if (unlike) {
            LensChoice otherwise = noted(picture, sightings);
            List<Caveat> caveats = new ArrayList<>(otherwise.caveats);
            caveats.add(0, new Caveat.CalibrationContradicted());
            return new LensChoice(otherwise.fitted, otherwise.guess, otherwise.source, Optional.empty(), caveats);
        }
        return new LensChoice(
                fitted,
                guess,
                LensSource.CALIBRATED,
                Optional.of(known),
                known.wasCalibratedFarFrom(distance_mm)
                        ? List.of(new Caveat.CalibratedElsewhere(known.nearest_mm(), known.farthest_mm(), distance_mm))
                        : List.of());
    }

    /** A printer, or a ruler, that is off by other shares across and along looks like another lens; that much is allowed for. */
    private static double distance(Picture picture, List<Sighting> sightings, LensGuess guess, Print print) {
        LensGuess any = LensGuess.ofAny(picture.width_px(), picture.height_px());
        return ViewFit.of(sightings, any).distance(guess, ViewFit.of(print.strained(sightings), any));
    }

    private static LensChoice noted(Picture picture, List<Sighting> sightings) {
        CameraNotes notes = picture.notes();
        int width_px = picture.width_px();
        int height_px = picture.height_px();
        if (notes.tellAnotherSizeThan(width_px, height_px)) {
            LensGuess cropped = LensGuess.ofCropped(width_px, height_px);
            return ofCard(
                    ViewFit.of(sightings, cropped),
                    cropped,
                    List.of(new Caveat.AnotherSizeNoted(notes.width_px(), notes.height_px())));
        }
        LensGuess usual = LensGuess.of(width_px, height_px, OptionalDouble.empty());
        FittedView alone = ViewFit.of(sightings, usual);
        OptionalDouble noted_px = notes.zoom() > 1 ? OptionalDouble.empty() : notes.findFocal_px(width_px, height_px);
        return noted_px.isEmpty()
                ? unnoted(alone, usual)
                : noted(sightings, LensGuess.of(width_px, height_px, noted_px), alone, usual);
    }

    private static LensChoice unnoted(FittedView alone, LensGuess usual) {
        double tilt_deg = alone.view().tilt_deg();
        return ofCard(
                alone, usual, tilt_deg < TELLING_TILT_DEG ? List.of(new Caveat.NoFocalNoted(tilt_deg)) : List.of());
    }

    private static LensChoice noted(List<Sighting> sightings, LensGuess guess, FittedView alone, LensGuess usual) {
        double noted_px = guess.focal_px();
        double solved_px = alone.view().lens().focal_px();
        double apart = Math.abs(Math.log(solved_px / noted_px));
        boolean contradicted = apart
                > CONTRADICTION
                        * Math.hypot(alone.focalDeviation(), guess.logFocal().deviation());
        return contradicted
                ? ofCard(alone, usual, List.of(new Caveat.FocalContradicted(noted_px, solved_px)))
                : new LensChoice(ViewFit.of(sightings, guess), guess, LensSource.NOTED, Optional.empty(), List.of());
    }

    private static LensChoice ofCard(FittedView alone, LensGuess guess, List<Caveat> caveats) {
        return new LensChoice(alone, guess, LensSource.CARD, Optional.empty(), caveats);
    }
}
