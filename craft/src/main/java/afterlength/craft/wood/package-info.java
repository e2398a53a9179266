/**
 * Wood and the air around it: the moisture that wood settles at, the air that belongs to a moisture, and how much wider or
 * narrower a plate becomes between two moistures. Answers carry their uncertainty and their caveats; outside the range that was
 * read in a source there is no number. Also how fast a plate follows the air, what happens when its edges are held, and how wood
 * carries heat. What a logger wrote down lives in the neighbour {@code air}.
 */
@NullMarked
package afterlength.craft.wood;

import org.jspecify.annotations.NullMarked;
