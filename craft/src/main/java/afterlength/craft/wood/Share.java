package afterlength.craft.wood;

/**
 * A part between nothing and the whole, known only as a band: how much of a movement is held back at glued edges, or how much
 * of a stress is left after the wood has crept. No published value was read for either; the shop may set its own.
 */
public record Share(double least, double most) {
    /** Nothing is known: from nothing to all. */
    public static final Share UNKNOWN = new Share(0, 1);

    /** A placeholder of common practice for stress: from half, after creep, to the whole, at once. */
    public static final Share HALF_TO_WHOLE = new Share(0.5, 1);

    public Share {
        if (!(0 <= least && least <= most && most <= 1)) {
            throw new IllegalArgumentException("share " + least + " to " + most + " is not a band between 0 and 1");
        }
    }
}
