package afterlength.craft.setup;

/**
 * One place on the map of the bow; a string with two limits.
 *
 * @param string counted from the bass, 0 first
 * @param semitones above the open string
 * @param opening_deg room between the limits, negative by how far they have crossed
 * @param meets_N the force at which this string, stopped and bowed here, has no room left
 */
public record BowCell(
        int string,
        int semitones,
        double distance_mm,
        double force_N,
        double opening_deg,
        double margin_mm,
        double meets_N) {
    static BowCell of(Played played, BowLimits limits) {
        return new BowCell(
                played.string(),
                played.semitones(),
                played.distance_mm(),
                played.force_N(),
                Math.toDegrees(limits.opening_rad()),
                limits.margin_mm(),
                limits.meets_N());
    }

    /** 0 when the limits have crossed. */
    public double clearAngle_deg() {
        return Math.max(0, opening_deg);
    }
}
