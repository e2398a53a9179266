package afterlength.craft.setup;

/**
 * One string as fitted to this instrument.
 *
 * @param name as the bench calls it, such as G; no two strings share one
 * @param diameter_mm over everything, at the bridge
 * @param pull tension, or what it follows from
 */
public record FittedString(String name, double diameter_mm, StringPull pull) {
    public static FittedString ofTension(String name, double diameter_mm, double tension_N) {
        return new FittedString(name, diameter_mm, new StringPull.Tension(tension_N));
    }

    /** For geometry alone. */
    public static FittedString ofDiameter(String name, double diameter_mm) {
        return new FittedString(name, diameter_mm, new StringPull.Unknown());
    }
}
