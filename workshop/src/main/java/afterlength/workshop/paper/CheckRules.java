package afterlength.workshop.paper;

/**
 * Two rules of 100 mm that share a corner, one along each axis, with a tick every 10 mm. Printers shrink a page to fit and
 * do so unevenly; whoever cuts by a sheet lays a steel rule on both of these first.
 */
public final class CheckRules {
    public static final String CAUTION = "Measure these rules before you cut";
    public static final double LENGTH_MM = 100;

    /** Room the upright rule takes to its right, and the level rule above it. */
    static final double BREADTH_MM = 11;

    private static final Stroke LINE = Stroke.of(Ink.INK, 0.2);
    private static final double SMALL_MM = 2.6;

    private CheckRules() {}

    /** The rules with their common corner at the given point; ticks and words point inwards. */
    public static Drawing at(Point corner) {
        Sketch sketch = new Sketch();
        sketch.line(corner, corner.moved(LENGTH_MM, 0), LINE).line(corner, corner.moved(0, LENGTH_MM), LINE);
        for (int mark_mm = 10; mark_mm <= LENGTH_MM; mark_mm += 10) {
            double tick_mm = mark_mm % 50 == 0 ? 3 : 1.8;
            Point onLevel = corner.moved(mark_mm, 0);
            Point onUpright = corner.moved(0, mark_mm);
            sketch.line(onLevel, onLevel.moved(0, tick_mm), LINE);
            sketch.line(onUpright, onUpright.moved(tick_mm, 0), LINE);
        }
        figures(sketch, corner);
        return sketch.drawing(
                CAUTION,
                "A level and an upright rule of 100 mm with a tick every 10 mm, to be measured after printing");
    }

    private static void figures(Sketch sketch, Point corner) {
        level(sketch, "50", corner.moved(50, 4), Anchor.MIDDLE);
        level(sketch, "100 mm", corner.moved(LENGTH_MM, 4), Anchor.MIDDLE);
        upright(sketch, "50", corner.moved(5.9, 50), Anchor.MIDDLE);
        upright(sketch, "100 mm", corner.moved(5.9, LENGTH_MM), Anchor.MIDDLE);
        sketch.words(CAUTION, corner.moved(5, 8), 3, Anchor.START, Face.SANS_STRONG, Ink.ACCENT);
    }

    private static void level(Sketch sketch, String words, Point at, Anchor anchor) {
        sketch.words(words, at, SMALL_MM, anchor, Face.SANS, Ink.FAINT);
    }

    private static void upright(Sketch sketch, String words, Point at, Anchor anchor) {
        sketch.turnedWords(words, at, SMALL_MM, anchor, 90, Face.SANS, Ink.FAINT);
    }
}
