/**
 * The glue pot on the shelf: batches of hot hide glue made up, soaked, warmed and used up by joints, each gluing with the air of its
 * moment; and how many seconds a spread film leaves. The arithmetic is {@code craft.glue}.
 */
@NullMarked
package afterlength.workshop.glue;

import org.jspecify.annotations.NullMarked;
