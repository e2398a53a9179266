package afterlength.sight.camera;

/** A lens that is known well, or why it is not. */
public sealed interface LensCalibrationAnswer {
    /** To be used as the guess for pictures of the same camera, focal length and size. */
    record Calibrated(LensGuess lens) implements LensCalibrationAnswer {}

    record Refused(String reason) implements LensCalibrationAnswer {}
}
