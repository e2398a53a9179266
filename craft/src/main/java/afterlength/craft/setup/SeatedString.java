package afterlength.craft.setup;

import afterlength.craft.units.Length;

/**
 * One string on the finished bridge.
 *
 * @param nutY place across at the nut
 * @param bridgeY place across at the bridge
 * @param nutUnderside underside at the nut over the board line
 * @param underside underside at the bridge over the board line
 * @param woodHeight height of the wood over the belly where the string sits
 * @param boardEndClearance underside to board at its end, as the inputs say clearance is measured
 */
public record SeatedString(
        String name,
        Length nutY,
        Length bridgeY,
        Length nutUnderside,
        Length underside,
        Length woodHeight,
        Length boardEndClearance) {}
