/** Beside the stages: the shop's backups, as a page on the shelf. */
@NullMarked
package afterlength.workshop.backup;

import org.jspecify.annotations.NullMarked;
