/**
 * Varnish in the pot and on the wood: what a batch holds by volume, how rich in oil it is on a named scale, how thick a coat lies wet
 * and dry, and how long the shop's own coats have taken to dry. Cooking, viscosity and the gain of mass of drying oil are not here.
 */
@NullMarked
package afterlength.craft.varnish;

import org.jspecify.annotations.NullMarked;
