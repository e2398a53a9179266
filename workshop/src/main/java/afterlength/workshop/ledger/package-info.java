/**
 * The shop's folder: database, migrations, photographs. Knows how to keep, not what is kept; the SQL of a stage stands in that
 * stage's store.
 */
@NullMarked
package afterlength.workshop.ledger;

import org.jspecify.annotations.NullMarked;
