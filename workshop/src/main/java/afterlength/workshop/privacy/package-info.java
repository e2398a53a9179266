/** What the shop keeps about a person: looking, handing over as a card, erasing. Knows people and pictures, not the job. */
@NullMarked
package afterlength.workshop.privacy;

import org.jspecify.annotations.NullMarked;
