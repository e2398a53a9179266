/**
 * What the demonstration shop is filled with. Its pictures are painted here from the program's own drawings of instruments, by
 * arithmetic alone: no photograph was used, no instrument and no maker is meant. Each picture says so on its lower edge.
 */
@NullMarked
package afterlength.start.demo;

import org.jspecify.annotations.NullMarked;
