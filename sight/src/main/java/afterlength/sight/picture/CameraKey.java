package afterlength.sight.picture;

import java.util.Optional;

/**
 * By which a camera is known again: what it noted of itself and of its lens, and the size of its pictures as the sensor lay. Two
 * telephones of one model share a key, and so would two of their calibrations; whether one fits is tried in every picture anew.
 * Serial numbers are not looked at.
 *
 * @param camera make and model
 * @param lens its name, or an empty text
 * @param focal_mm the focal length itself, in hundredths
 * @param focal35_mm as noted for a frame of 36 × 24 mm, 0 when not noted; a picture enlarged by calculation differs in it
 */
public record CameraKey(String camera, String lens, double focal_mm, double focal35_mm, int width_px, int height_px) {
    /**
     * Of a picture as the camera made it; nothing when camera or focal length were not noted, or when the picture was enlarged,
     * cropped or mirrored, so that its pixels no longer lie as they did behind the lens.
     */
    public static Optional<CameraKey> of(Picture picture) {
        CameraNotes notes = picture.notes();
        boolean told = !notes.camera().isEmpty() && notes.focal_mm() > 0 && notes.zoom() <= 1;
        boolean asTaken = !notes.tellAnotherSizeThan(picture.width_px(), picture.height_px())
                && !picture.turn().mirrors();
        return told && asTaken ? Optional.of(told(picture)) : Optional.empty();
    }

    private static CameraKey told(Picture picture) {
        CameraNotes notes = picture.notes();
        boolean lays = picture.turn().lays();
        return new CameraKey(
                notes.camera(),
                notes.lens(),
                Math.round(notes.focal_mm() * 100) / 100.0,
                notes.focal35_mm(),
                lays ? picture.height_px() : picture.width_px(),
                lays ? picture.width_px() : picture.height_px());
    }

    /** The same camera and lens, whatever its focal length and the size of its pictures. */
    public boolean sameCamera(CameraKey other) {
        return camera.equals(other.camera) && lens.equals(other.lens);
    }
}
