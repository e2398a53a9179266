package afterlength.sight.find;

import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Corner;

/**
 * A corner of a card, and where in the picture it was seen.
 *
 * @param sure whether a square whose code was read touches it; else its number was counted from its neighbours, and something
 *     beside the card that looks like a corner may have been counted in
 */
public record FoundCorner(Corner corner, Pixel seen, boolean sure) {}
