/**
 * Shapes of the instrument as plane curves in millimetres: outline, sound-hole, bridge, board, head, ribs. All of them are
 * drawn from a few measures with our own curves; none follows a particular maker or a particular instrument. How a curve
 * becomes ink or light is decided elsewhere.
 *
 * <p>Axes as the player sees the front: x to the treble side from the centre line, y down the instrument from the upper edge of
 * the body. The neck therefore has negative y.
 */
@NullMarked
package afterlength.craft.geometry;

import org.jspecify.annotations.NullMarked;
