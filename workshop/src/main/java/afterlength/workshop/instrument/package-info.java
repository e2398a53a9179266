/** Owner, instrument, its story, a visit to the workshop. The first stage: everything else hangs on a visit. */
@NullMarked
package afterlength.workshop.instrument;

import org.jspecify.annotations.NullMarked;
