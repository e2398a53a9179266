/** Web plumbing, layout and words shared by all stages: the server, the frame of a page, forms that keep what was typed. */
@NullMarked
package afterlength.workshop.desk;

import org.jspecify.annotations.NullMarked;
