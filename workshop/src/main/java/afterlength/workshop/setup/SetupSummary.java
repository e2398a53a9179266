package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.instrument.Visit;
import org.jspecify.annotations.Nullable;

record SetupSummary(
        Visit visit, @Nullable BridgeShape before, @Nullable BridgeShape after) {}
