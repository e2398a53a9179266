/** Beside the stages: the door for tablets at the bench, their pairing, and who is shut out again. */
@NullMarked
package afterlength.workshop.tablet;

import org.jspecify.annotations.NullMarked;
