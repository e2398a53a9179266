package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;

/**
 * A cleat of the row.
 *
 * @param along_mm from the beginning of the crack
 * @param turn_deg of its first side
 * @param grain_deg direction of its own grain
 * @param moved_mm how far it had to give way along the crack
 */
public record PlacedCleat(
        double along_mm, Point centre, double turn_deg, double grain_deg, double moved_mm, Outline outline) {}
