/**
 * What a photograph may say about colour: the light it was taken in, read from the bare paper of the card, and the class of a
 * colour read from it with the usual error of that class. The printed patches are no standard: nobody knows what the printer
 * made of them.
 */
@NullMarked
package afterlength.sight.colour;

import org.jspecify.annotations.NullMarked;
