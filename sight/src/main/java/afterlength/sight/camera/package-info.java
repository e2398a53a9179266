/**
 * How a plane looks through a camera: the pinhole with one lens coefficient, where it stood over the card, and how both are
 * solved from corners seen in one picture, with their uncertainty. No picture is read here; corners come as numbers.
 */
@NullMarked
package afterlength.sight.camera;

import org.jspecify.annotations.NullMarked;
