/**
 * Wood and the air around it: the moisture that wood settles at, the air that belongs to a moisture, and how much wider or
 * narrower a plate becomes between two moistures. Answers carry their uncertainty and their caveats; outside the range that was
 * read in a source there is no number. How fast a plate follows the air, and the stress in a held plate, are not here.
 */
@NullMarked
package afterlength.craft.wood;

import org.jspecify.annotations.NullMarked;
