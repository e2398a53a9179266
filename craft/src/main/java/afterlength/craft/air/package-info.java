/**
 * The record of a climate logger: how its rows are laid out, what each row says, what is wrong with it, and what the record means
 * for a plate of spruce. Rows are pushed in one by one and nothing of the file is kept but its numbers; opening files is for
 * others. The arithmetic of moisture lives in the neighbour {@code wood}.
 */
@NullMarked
package afterlength.craft.air;

import org.jspecify.annotations.NullMarked;
