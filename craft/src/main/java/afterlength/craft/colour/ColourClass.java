package afterlength.craft.colour;

import java.util.OptionalDouble;

/**
 * How a colour came to be known, and how far it is usually off: ΔE00 from the true colour by calculation with invented cameras and
 * prints, on brown and orange samples. The light decides as much as the means: under a warm lamp photographs are two to three times
 * worse. Source: docs/sources.md#colour-study.
 */
public enum ColourClass {
    /** Reflectance from an instrument with noise of 0.15 %: what that noise leaves in a first recipe. */
    INSTRUMENT("measured by an instrument", 0.3, 0.4, Double.NaN),
    /** A photograph corrected by twelve patches that an instrument has measured. */
    MEASURED_PATCHES("photograph corrected by measured patches", 1.5, 4.3, 4.7),
    /** A photograph brought onto an earlier one by the same printed card, whose own colours are unknown. */
    TRANSFERRED("photograph carried over by one card", 0.4, 0.8, 1.3),
    /** Two places in one photograph: only how they differ is known. */
    ONE_PHOTOGRAPH("relative, in one photograph", 0.4, 1.1, 0.9),
    /** A photograph taken as it is. */
    UNCALIBRATED("uncalibrated photograph", 4.8, Double.NaN, 7.9);

    /** At L* 40 a step of 1 in L* is 0.6 % of reflectance. Source: docs/sources.md#cie-015. */
    private static final double REFLECTANCE_OF_ONE = 0.006;

    private static final double INSTRUMENT_NOISE = 0.0015;

    private final String words;
    private final double typical;
    private final double seldomAbove;
    private final double underLamp;

    ColourClass(String words, double typical, double seldomAbove, double underLamp) {
        this.words = words;
        this.typical = typical;
        this.seldomAbove = seldomAbove;
        this.underLamp = underLamp;
    }

    public String words() {
        return words;
    }

    /** The mean error in daylight; of {@link #ONE_PHOTOGRAPH} and {@link #TRANSFERRED}, of the difference between the two places. */
    public double typical() {
        return typical;
    }

    /** Nine of ten (instrument) or nineteen of twenty (photographs) are below this; empty where it was not counted. */
    public OptionalDouble seldomAbove() {
        return Double.isNaN(seldomAbove) ? OptionalDouble.empty() : OptionalDouble.of(seldomAbove);
    }

    /** The mean error under a warm lamp, or when the light changed between two photographs; empty where it was not counted. */
    public OptionalDouble underLamp() {
        return Double.isNaN(underLamp) ? OptionalDouble.empty() : OptionalDouble.of(underLamp);
    }

    /** One standard deviation of a reflectance, for {@link DrawdownFit}. */
    public double noise() {
        return this == INSTRUMENT ? INSTRUMENT_NOISE : REFLECTANCE_OF_ONE * typical;
    }
}
