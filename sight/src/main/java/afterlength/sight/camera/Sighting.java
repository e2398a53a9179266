package afterlength.sight.camera;

import afterlength.craft.geometry.Point;

/** One corner of the card, where it lies on the card as it was printed, and where it was seen. */
public record Sighting(Point place, Pixel seen) {}
