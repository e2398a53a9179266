package afterlength.sight.find;

import afterlength.sight.card.Card;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A card found in a picture.
 *
 * @param softness_px how far its edges are spread, as one standard deviation; nothing when no two corners lie side by side
 */
public record FoundCard(Card card, List<FoundCorner> corners, OptionalDouble softness_px) {
    public FoundCard {
        corners = List.copyOf(corners);
    }
}
