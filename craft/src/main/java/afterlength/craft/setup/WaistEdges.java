package afterlength.craft.setup;

/** The edges of the C-bouts at the bridge as the bow meets them: half the width out, projection and edge drop below the board line. */
final class WaistEdges {
    private final Disc bass;
    private final Disc treble;

    WaistEdges(BridgeInputs inputs) {
        Waist waist = inputs.waist();
        if (waist == null) {
            bass = Disc.UNKNOWN;
            treble = Disc.UNKNOWN;
        } else {
            double below_mm = -(inputs.projection_mm() + waist.edgeDrop_mm());
            bass = Disc.edge(-waist.width_mm() / 2, below_mm);
            treble = Disc.edge(waist.width_mm() / 2, below_mm);
        }
    }

    BowSection section(StringRun[] runs, double distance_mm) {
        return new BowSection(runs, bass, treble, distance_mm);
    }
}
