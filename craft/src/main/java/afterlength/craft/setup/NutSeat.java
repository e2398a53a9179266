package afterlength.craft.setup;

import afterlength.craft.units.Length;

/**
 * One string at the nut.
 *
 * @param y place across
 * @param clearance underside of the string, which is the floor of its groove, to the board
 * @param floor the same floor over the board line
 * @param heightBeforeGrooves of the nut over the board here, as it is dressed before the grooves are cut
 */
public record NutSeat(String name, Length y, Length clearance, Length floor, Length heightBeforeGrooves) {}
