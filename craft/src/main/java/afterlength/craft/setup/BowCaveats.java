package afterlength.craft.setup;

import afterlength.craft.units.Length;
import java.util.ArrayList;
import java.util.List;

/** What the bow was not told. */
final class BowCaveats {
    private BowCaveats() {}

    static List<Caveat> list(BridgeInputs inputs, boolean stopped, double farthest_mm) {
        List<Caveat> caveats = new ArrayList<>();
        if (stopped && inputs.board().scoop_mm() == null) {
            caveats.add(new Caveat.ScoopNotMeasured());
        }
        if (inputs.waist() == null) {
            caveats.add(new Caveat.WaistNotMeasured());
        }
        double boardEnd_mm = inputs.speakingLength_mm() - inputs.board().length_mm();
        if (farthest_mm > boardEnd_mm) {
            caveats.add(new Caveat.BowOverBoard(Length.ofMm(farthest_mm), Length.ofMm(boardEnd_mm)));
        }
        return caveats;
    }
}
