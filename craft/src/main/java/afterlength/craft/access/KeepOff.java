package afterlength.craft.access;

import afterlength.craft.geometry.Outline;

/**
 * Where no cleat may lie.
 *
 * @param margin_mm what has to stay free round it
 */
public record KeepOff(Kind kind, Outline outline, double margin_mm) {
    /** What is kept free. */
    public enum Kind {
        BAR,
        POST,
        LINING,
        SOUND_HOLE,
        /** Another cleat of the row; never given, only answered. */
        CLEAT
    }

    public KeepOff {
        if (!(margin_mm >= 0)) {
            throw new IllegalArgumentException("margin " + margin_mm + " mm is less than 0 mm");
        }
    }
}
