/**
 * The climate of the shop: logger files taken in after a look at their layout, the air of every hour kept, what a plate made of it,
 * and the steps that matter. Other stages ask here for the air of a moment. The arithmetic is {@code craft.air} and
 * {@code craft.wood}.
 */
@NullMarked
package afterlength.workshop.climate;

import org.jspecify.annotations.NullMarked;
