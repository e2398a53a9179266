/**
 * Bills and credit notes, beside the stages: made from what was agreed and what the diary says was done, numbered without a gap,
 * never changed. Whole minor units throughout; a test reads the byte code for floating point. What is owed after a bill was
 * sent, and whether it was paid, is not followed here.
 */
@NullMarked
package afterlength.workshop.invoice;

import org.jspecify.annotations.NullMarked;
