/**
 * The arithmetic of the trade without a browser: one class per verb, which reads its document, asks {@code craft} and writes the
 * answer. No arithmetic happens here.
 */
@NullMarked
package afterlength.start.verbs;

import org.jspecify.annotations.NullMarked;
