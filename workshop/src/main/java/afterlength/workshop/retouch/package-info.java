/**
 * Varnish and retouch: the shop's varnish book and its palette on the shelf, and for a visit the recipe that brings a loss near the
 * varnish beside it, coat by coat.
 */
@NullMarked
package afterlength.workshop.retouch;

import org.jspecify.annotations.NullMarked;
