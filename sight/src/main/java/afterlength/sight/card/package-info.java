/**
 * The printed cards as plain geometry in millimetres: where every black square lies, where the corners between them are, the
 * rule, the check lines and the patches. Whoever prints a card draws this list; whoever finds one compares with it. No page
 * and no picture is made here. The axes are those of the sheet seen from above: x to the right, y down, from the upper left
 * corner of the card.
 */
@NullMarked
package afterlength.sight.card;

import org.jspecify.annotations.NullMarked;
