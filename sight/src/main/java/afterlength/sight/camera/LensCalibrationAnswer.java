package afterlength.sight.camera;

import java.util.List;

/** A lens that is known well, or why it is not. */
public sealed interface LensCalibrationAnswer {
    /**
     * To be used as the guess for pictures of the same camera, focal length and size.
     *
     * @param residual_px root of the mean square over the corners of all pictures
     * @param pictures in the order they were given
     */
    record Calibrated(LensGuess lens, double residual_px, List<Seen> pictures) implements LensCalibrationAnswer {
        public Calibrated {
            pictures = List.copyOf(pictures);
        }
    }

    /**
     * One of the pictures, with the lens they share.
     *
     * @param distance_mm from the lens along its axis to the card's plane
     */
    record Seen(double residual_px, double tilt_deg, double distance_mm) {}

    record Refused(String reason) implements LensCalibrationAnswer {}
}
