/** Wiring, command line, main: the only place that knows everybody. */
@NullMarked
package afterlength.start;

import org.jspecify.annotations.NullMarked;
