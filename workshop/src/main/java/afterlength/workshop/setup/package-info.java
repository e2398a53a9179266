/** The bridge and strings of this instrument, before and after: what was measured, what is to be cut, and how it is drawn. */
@NullMarked
package afterlength.workshop.setup;

import org.jspecify.annotations.NullMarked;
