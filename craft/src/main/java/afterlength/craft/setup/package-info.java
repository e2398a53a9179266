/**
 * The geometry and forces of strings, board, bridge, bow and post of any bowed instrument with three to six strings. Sizes are
 * measured, never looked up from a size name.
 *
 * <p>Frame, in millimetres: x runs along the centre line from the nut (0) to the bridge (speaking length); y across, positive to
 * the treble side; z away from the belly. z = 0 is the <em>board line</em>: the straight line from the crown of the board at the
 * nut to its crown at the end, carried on to the bridge. The scoop does not enter it.
 *
 * <p>What lives here are numbers and facts. The words made of them live with the pages and papers that say them.
 */
@NullMarked
package afterlength.craft.setup;

import org.jspecify.annotations.NullMarked;
