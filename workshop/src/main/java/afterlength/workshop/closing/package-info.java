/**
 * The last chance before something is covered, beside the stages: what has to be pictured, measured or written down before glue, wood,
 * colour or the closed body hide it, by what is agreed. Ticked by hand; a tick is history. It bars no step: the person decides.
 */
@NullMarked
package afterlength.workshop.closing;

import org.jspecify.annotations.NullMarked;
