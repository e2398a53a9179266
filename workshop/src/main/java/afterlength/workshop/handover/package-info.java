/** What goes home with the instrument: the final report, care advice, returned parts, the next check. The last stage. */
@NullMarked
package afterlength.workshop.handover;

import org.jspecify.annotations.NullMarked;
