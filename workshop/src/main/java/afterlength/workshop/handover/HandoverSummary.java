package afterlength.workshop.handover;

import afterlength.workshop.instrument.Visit;
import org.jspecify.annotations.Nullable;

record HandoverSummary(Visit visit, @Nullable Handover handover) {}
