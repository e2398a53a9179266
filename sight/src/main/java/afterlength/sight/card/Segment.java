package afterlength.sight.card;

import afterlength.craft.geometry.Point;

/** A straight thin line on a card. */
public record Segment(Point from, Point to) {}
