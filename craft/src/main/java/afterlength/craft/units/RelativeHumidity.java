package afterlength.craft.units;

/** Relative humidity of air in per cent, 0 to 100. */
public record RelativeHumidity(double pct) {
    public RelativeHumidity {
        Finite.require("relative humidity", pct, "%");
        if (pct < 0 || pct > 100) {
            throw new IllegalArgumentException("relative humidity " + pct + " % lies outside 0 to 100 %");
        }
    }

    public static RelativeHumidity ofPct(double pct) {
        return new RelativeHumidity(pct);
    }
}
