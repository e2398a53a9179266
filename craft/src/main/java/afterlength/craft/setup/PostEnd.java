package afterlength.craft.setup;

import afterlength.craft.units.Angle;

/**
 * How one end of the post is cut to meet its plate.
 *
 * @param along off square to the axis, positive when the post grows longer to the tail
 * @param across off square to the axis, positive when it grows longer to the treble side
 * @param plusMinus of either angle
 */
public record PostEnd(Angle along, Angle across, Angle plusMinus) {}
