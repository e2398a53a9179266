package afterlength.sight.measure;

/**
 * How high over the plane of the card a mark lies, and how well that is known. It is the largest error of all: 15 mm at a
 * distance of 430 mm make every length 3.6 % too long (docs/sources.md#photo-study).
 *
 * @param deviation_mm one standard deviation
 */
public record Height(double mm, double deviation_mm) {
    /** A height that was chosen or given may be off by so much: an arch is not measured with a class. */
    public static final double CHOSEN_MM = 3;

    /** Nothing was said: a card on the bench lies anywhere between belly and edge. */
    public static final double UNKNOWN_MM = 15;

    /** In the plane of the card itself, such as a template laid beside it; paper never lies quite flat. */
    public static final Height IN_PLANE = new Height(0, 0.2);

    /** At the edge, with the card laid at that height. */
    public static final Height EDGE = new Height(0, CHOSEN_MM);

    /** Half way up the arch; an estimate to be corrected. */
    public static final Height HALF = new Height(8, CHOSEN_MM);

    /** On top of the arch; an estimate to be corrected. */
    public static final Height TOP = new Height(15, CHOSEN_MM);

    public static final Height UNKNOWN = new Height(0, UNKNOWN_MM);

    public Height {
        if (!Double.isFinite(mm) || !(deviation_mm >= 0)) {
            throw new IllegalArgumentException("a height of " + mm + " ± " + deviation_mm + " mm is none");
        }
    }

    public static Height given(double mm) {
        return new Height(mm, CHOSEN_MM);
    }
}
