package afterlength.craft.setup;

import afterlength.craft.units.Angle;
import java.util.OptionalDouble;

/** A crown drawn, with the map of the bow over it. */
public record CrownTried(Crown crown, BridgeShape shape, BowMap map) implements CrownTrial {
    /** Room at the tightest place of the map, negative when limits have crossed there; empty when nothing on it can be played. */
    public OptionalDouble findOpening_deg() {
        return map.cells().stream().mapToDouble(BowCell::opening_deg).min();
    }

    /** How much more room this crown leaves at its tightest place than another at its own. */
    public Angle gainOver(CrownTried other) {
        return Angle.ofDeg(
                findOpening_deg().orElseThrow() - other.findOpening_deg().orElseThrow());
    }
}
