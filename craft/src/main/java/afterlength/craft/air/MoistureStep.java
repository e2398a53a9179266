package afterlength.craft.air;

/**
 * A change of the moisture of a plate that matters: as large as a held spruce plate can bear where nothing creeps. Moments in
 * seconds since 1970.
 */
public record MoistureStep(long from_s, long to_s, double from_pct, double to_pct) {
    public double change_pct() {
        return to_pct - from_pct;
    }

    public double hours() {
        return (to_s - from_s) / 3600.0;
    }
}
