/**
 * Measuring in a photograph: the door through which pages and the command line come. A picture is read, the card found, the
 * camera solved; then every mark has its millimetres with plus and minus, or a reason why not. All words of refusal are made
 * here.
 */
@NullMarked
package afterlength.sight.measure;

import org.jspecify.annotations.NullMarked;
