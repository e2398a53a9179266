package afterlength.sight.measure;

import afterlength.sight.camera.FittedView;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Sighting;
import afterlength.sight.camera.ViewFit;
import afterlength.sight.picture.CameraNotes;
import afterlength.sight.picture.Picture;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which earlier knowledge of the lens the fit may lean on. What the file notes is first tried against the card alone: when the
 * two lie further apart than their uncertainties allow, the notes are dropped and the person is told.
 *
 * @param fitted the view, solved with the chosen knowledge
 */
record LensChoice(FittedView fitted, List<Caveat> caveats) {
    /** Noted and seen focal length may differ by so many of their joint deviations. */
    private static final double CONTRADICTION = 3;

    /** Below this tilt a plane hardly tells the focal length (docs/sources.md#photo-study). */
    private static final double TELLING_TILT_DEG = 10;

    static LensChoice of(Picture picture, Optional<LensGuess> calibrated, List<Sighting> sightings) {
        if (calibrated.isPresent()) {
            return new LensChoice(ViewFit.of(sightings, calibrated.get()), List.of());
        }
        CameraNotes notes = picture.notes();
        int width_px = picture.width_px();
        int height_px = picture.height_px();
        if (notes.tellAnotherSizeThan(width_px, height_px)) {
            FittedView alone = ViewFit.of(sightings, LensGuess.ofCropped(width_px, height_px));
            return new LensChoice(alone, List.of(new Caveat.AnotherSizeNoted(notes.width_px(), notes.height_px())));
        }
        FittedView alone = ViewFit.of(sightings, LensGuess.of(width_px, height_px, OptionalDouble.empty()));
        OptionalDouble noted_px = notes.zoom() > 1 ? OptionalDouble.empty() : notes.findFocal_px(width_px, height_px);
        return noted_px.isEmpty()
                ? unnoted(alone)
                : noted(sightings, LensGuess.of(width_px, height_px, noted_px), alone, noted_px.getAsDouble());
    }

    private static LensChoice unnoted(FittedView alone) {
        double tilt_deg = alone.view().tilt_deg();
        return new LensChoice(
                alone, tilt_deg < TELLING_TILT_DEG ? List.of(new Caveat.NoFocalNoted(tilt_deg)) : List.of());
    }

    private static LensChoice noted(List<Sighting> sightings, LensGuess guess, FittedView alone, double noted_px) {
        double solved_px = alone.view().lens().focal_px();
        double apart = Math.abs(Math.log(solved_px / noted_px));
        boolean contradicted = apart
                > CONTRADICTION
                        * Math.hypot(alone.focalDeviation(), guess.logFocal().deviation());
        return contradicted
                ? new LensChoice(alone, List.of(new Caveat.FocalContradicted(noted_px, solved_px)))
                : new LensChoice(ViewFit.of(sightings, guess), List.of());
    }
}
