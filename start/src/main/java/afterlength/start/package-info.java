/** The front door: what is typed after {@code ./afterlength} and who answers it. Everybody is known here and nobody knows it. */
@NullMarked
package afterlength.start;

import org.jspecify.annotations.NullMarked;
