/**
 * One JSON document in, one out. Reading is strict and patient: every problem is collected with its JSON pointer before the
 * document is refused. What the keys mean is not known here but in the verbs.
 */
@NullMarked
package afterlength.start.document;

import org.jspecify.annotations.NullMarked;
