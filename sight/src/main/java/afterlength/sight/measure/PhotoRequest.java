package afterlength.sight.measure;

import afterlength.sight.camera.LensGuess;
import java.util.Optional;

/**
 * What is known before a photograph is looked at.
 *
 * @param card the word of the card that lies in it, or nothing for any
 * @param calibrated the lens, when this camera was calibrated with this focal length and picture size
 */
public record PhotoRequest(Optional<String> card, Print print, Optional<LensGuess> calibrated) {
    public static PhotoRequest of(String card, Print print) {
        return new PhotoRequest(Optional.of(card), print, Optional.empty());
    }
}
