package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeInputs;
import java.time.Instant;

/** Strings, nut, board, bridge and wished clearances of one visit at one moment, as saved. A later saving replaces it; both stay. */
public record Setup(long id, long visitId, SetupMoment moment, SetupBench bench, Instant savedAt, String hand) {
    /** A set-up of which nothing is known but the bridge. */
    public Setup(long id, long visitId, SetupMoment moment, BridgeInputs inputs, Instant savedAt, String hand) {
        this(id, visitId, moment, SetupBench.of(inputs), savedAt, hand);
    }

    public BridgeInputs inputs() {
        return bench.inputs();
    }
}
