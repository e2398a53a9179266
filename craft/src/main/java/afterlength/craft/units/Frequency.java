package afterlength.craft.units;

/** A frequency in hertz, never negative. */
public record Frequency(double hertz) {
    public Frequency {
        Finite.require("frequency", hertz, "Hz");
        if (hertz < 0) {
            throw new IllegalArgumentException("frequency " + hertz + " Hz is below zero");
        }
    }

    public static Frequency ofHertz(double hertz) {
        return new Frequency(hertz);
    }
}
