/**
 * Finding a printed card in a picture. The only place that hands a picture to the vision library; what comes back are corners
 * with their place on the card.
 */
@NullMarked
package afterlength.sight.find;

import org.jspecify.annotations.NullMarked;
