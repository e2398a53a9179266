package afterlength.workshop.paper;

/** A length written on a drawing: a thin line with a tick at both ends and its words in the middle, on bare paper. */
public final class DimensionLine {
    private final Sketch sketch;
    private final double size_mm;
    private final Ink ink;
    private final Stroke line;

    /**
     * @param size_mm of the words; ticks follow it
     * @param line_mm breadth of the line
     */
    public DimensionLine(Sketch sketch, double size_mm, double line_mm, Ink ink) {
        this.sketch = sketch;
        this.size_mm = size_mm;
        this.ink = ink;
        this.line = Stroke.of(ink, line_mm);
    }

    public void level(double fromX_mm, double toX_mm, double y_mm, String words) {
        Point from = new Point(fromX_mm, y_mm);
        Point to = new Point(toX_mm, y_mm);
        double tick_mm = size_mm * 0.25;
        sketch.line(from, to, line)
                .line(from.moved(0, -tick_mm), from.moved(0, tick_mm), line)
                .line(to.moved(0, -tick_mm), to.moved(0, tick_mm), line);
        Point middle = new Point((fromX_mm + toX_mm) / 2, y_mm - capital_mm() / 2);
        put(words, middle, 0, Face.SANS);
    }

    /** Words read upwards. */
    public void upright(double x_mm, double fromY_mm, double toY_mm, String words) {
        uprightLine(x_mm, fromY_mm, toY_mm);
        put(words, new Point(x_mm + capital_mm() / 2, (fromY_mm + toY_mm) / 2), 90, Face.SANS);
    }

    /** Words read level, at a height of their own. */
    public void uprightWithLevelWords(double x_mm, double fromY_mm, double toY_mm, double wordsY_mm, String words) {
        uprightLine(x_mm, fromY_mm, toY_mm);
        put(words, new Point(x_mm, wordsY_mm), 0, Face.SANS_STRONG);
    }

    private void uprightLine(double x_mm, double fromY_mm, double toY_mm) {
        Point from = new Point(x_mm, fromY_mm);
        Point to = new Point(x_mm, toY_mm);
        double tick_mm = size_mm * 0.25;
        sketch.line(from, to, line)
                .line(from.moved(-tick_mm, 0), from.moved(tick_mm, 0), line)
                .line(to.moved(-tick_mm, 0), to.moved(tick_mm, 0), line);
    }

    private void put(String words, Point at, double turn_deg, Face face) {
        sketch.wordsOnPaper(new Words(words, at, size_mm, Anchor.MIDDLE, turn_deg, face, ink));
    }

    private double capital_mm() {
        return size_mm * Words.CAPITAL_HEIGHT;
    }
}
