package afterlength.workshop.examination;

/**
 * One of the pictures a camera was calibrated from; the file itself is not kept.
 *
 * @param residualPx root of the mean square over its corners, with the lens all pictures share
 * @param distanceMm from the lens along its axis to the card
 */
public record CalibrationPicture(String sha256, int corners, double residualPx, double tiltDeg, double distanceMm) {}
