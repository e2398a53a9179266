/**
 * Hot hide glue: making up a batch, what the pot may be heated to, and how many seconds a spread film stays workable on cold wood.
 * Guidance with a band, never a promise: sources disagree. How wood carries heat is asked of the neighbour {@code wood}; clocks
 * and pots are not here.
 */
@NullMarked
package afterlength.craft.glue;

import org.jspecify.annotations.NullMarked;
