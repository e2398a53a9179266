package afterlength.craft.units;

/** Moisture content of wood: mass of water per mass of oven-dry wood, in per cent. */
public record MoistureContent(double pct) {
    public MoistureContent {
        Finite.require("moisture content", pct, "%");
        if (pct < 0) {
            throw new IllegalArgumentException("moisture content " + pct + " % is negative");
        }
    }

    public static MoistureContent ofPct(double pct) {
        return new MoistureContent(pct);
    }
}
