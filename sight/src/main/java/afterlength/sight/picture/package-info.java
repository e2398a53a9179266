/**
 * Picture files before anything is measured in them: what a file is, how large it says it is, how the camera was held and
 * which lens it noted, and its pixels, upright. Memory is spent only after the header was read and found fit.
 */
@NullMarked
package afterlength.sight.picture;

import org.jspecify.annotations.NullMarked;
