/**
 * Photographs made by calculation: a card as it lies in the file, seen through a known camera, blurred, shaded, noisy, and pressed
 * into a JPEG. They are best cases: no real paper, no real lens and no real hand took part.
 */
@NullMarked
package afterlength.sight.rendered;

import org.jspecify.annotations.NullMarked;
