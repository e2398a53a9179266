/**
 * Quantities by name: a length is never mistaken for a force at a boundary. Inside formulas plain doubles with a unit suffix
 * are used. What is refused here is only the impossible (not a number, below absolute zero, negative humidity); what is
 * unusual in the trade is judged where it is used.
 */
@NullMarked
package afterlength.craft.units;

import org.jspecify.annotations.NullMarked;
