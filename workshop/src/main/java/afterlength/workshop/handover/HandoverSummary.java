package afterlength.workshop.handover;

import afterlength.workshop.instrument.Visit;
import org.jspecify.annotations.Nullable;

/**
 * A handover as the instrument's page tells it.
 *
 * @param checks whether the instrument went home from here before, so that its measures can be compared
 */
record HandoverSummary(Visit visit, @Nullable Handover handover, boolean checks) {}
