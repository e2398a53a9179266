package afterlength.craft.setup;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;

/**
 * What one string does to the bridge.
 *
 * @param resultant the whole thrust
 * @param downforce its part square to the plane of the edges
 * @param sideways its part towards the treble side
 * @param lean how far it tips towards the board in the side view
 * @param stringAngle between the two sides of the string, in space
 * @param trebleFoot part of this string's load on the treble foot
 */
public record StringThrust(
        String name,
        Force tension,
        Force resultant,
        Force downforce,
        Force sideways,
        Angle lean,
        Angle stringAngle,
        double trebleFoot) {}
