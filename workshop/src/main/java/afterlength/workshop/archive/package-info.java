/**
 * What outlives the program: a shop, or what belongs to one instrument or person, as one archive of open formats, and the way back
 * into an empty shop. Knows the stages by what they keep; the rows themselves go as files, whatever tables there are.
 */
@NullMarked
package afterlength.workshop.archive;

import org.jspecify.annotations.NullMarked;
