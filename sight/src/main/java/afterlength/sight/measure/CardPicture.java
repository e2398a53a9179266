package afterlength.sight.measure;

import afterlength.sight.camera.Sighting;
import afterlength.sight.picture.CameraKey;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a picture of a card tells for the calibration of its camera.
 *
 * @param noted_px the focal length the file notes, in pixels
 * @param asLaid the corners, in pixels of the picture as the sensor lay
 * @param checkedPrint whether the check lines of the card were measured; a printer that is off by other shares across and along
 *     would become a wrong focal length
 * @param tilt_deg as solved from this picture alone
 */
public record CardPicture(
        CameraKey camera, OptionalDouble noted_px, List<Sighting> asLaid, boolean checkedPrint, double tilt_deg) {
    public CardPicture {
        asLaid = List.copyOf(asLaid);
    }
}
