package afterlength.sight.measure;

import afterlength.sight.card.Card;
import afterlength.sight.picture.CameraKey;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is known before a photograph is looked at.
 *
 * @param card the word of the card that lies in it, or nothing for any
 * @param prints how each card was printed; which one lies in the picture is known only when it was found
 * @param lenses the calibrated lens of a camera with this focal length and picture size, where there is one
 */
public record PhotoRequest(
        Optional<String> card, Function<Card, Print> prints, Function<CameraKey, Optional<KnownLens>> lenses) {
    public static PhotoRequest of(String card, Print print) {
        return of(Optional.of(card), print);
    }

    /** One print, whichever card it is. */
    public static PhotoRequest of(Optional<String> card, Print print) {
        return new PhotoRequest(card, any -> print, any -> Optional.empty());
    }
}
