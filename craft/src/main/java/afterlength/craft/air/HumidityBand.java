package afterlength.craft.air;

/**
 * Bands of relative humidity in which a shop judges its air. Between 40 and 60 % most instruments are well, docs/sources.md#humidity-sheet;
 * below 25 % even briefly splitting is likely, and weeks above 75 % bring mould, docs/sources.md#padfield-humidity. The bands between
 * are our own. The history of a piece outranks all of them.
 */
public enum HumidityBand {
    BELOW_25(0, 25, "below 25 %", "splitting likely, even after a short time"),
    TO_35(25, 35, "25 to 35 %", "too dry: damp the room"),
    TO_40(35, 40, "35 to 40 %", "dry: watch seams and cracks"),
    TO_60(40, 60, "40 to 60 %", "as it should be"),
    TO_65(60, 65, "60 to 65 %", "damp: watch string height"),
    TO_75(65, 75, "65 to 75 %", "too damp: dry the room"),
    ABOVE_75(75, 100.001, "above 75 %", "mould likely when it lasts for weeks");

    private final double from_pct;
    private final double to_pct;
    private final String words;
    private final String meaning;

    HumidityBand(double from_pct, double to_pct, String words, String meaning) {
        this.from_pct = from_pct;
        this.to_pct = to_pct;
        this.words = words;
        this.meaning = meaning;
    }

    /** A bound belongs to the band above it, except 60, 65 and 75 %, which belong to the one below. */
    public static HumidityBand of(double humidity_pct) {
        for (HumidityBand band : values()) {
            boolean atItsTop = humidity_pct == band.to_pct && band.to_pct >= TO_60.to_pct;
            if (humidity_pct < band.to_pct || atItsTop) {
                return band;
            }
        }
        throw new IllegalArgumentException("relative humidity " + humidity_pct + " % lies outside 0 to 100 %");
    }

    public double from_pct() {
        return from_pct;
    }

    public double to_pct() {
        return Math.min(100, to_pct);
    }

    public String words() {
        return words;
    }

    public String meaning() {
        return meaning;
    }
}
