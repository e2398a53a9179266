package afterlength.workshop.paper;

/**
 * Head, check rules and foot of a sheet, drawn in the common box with its lower left corner as origin, and the room left
 * between them for what is drawn.
 */
final class SheetFrame {
    private static final double WIDTH_MM = PaperSize.BOX_WIDTH_MM;
    private static final double TOP_MM = PaperSize.BOX_HEIGHT_MM;
    private static final double RULES_FOOT_MM = 9;
    private static final double SPACE_MM = 3;
    private static final int COLUMNS = 3;
    private static final Stroke RULE = Stroke.of(Ink.INK, 0.15);

    private final SheetHead head;
    private final double headFoot_mm;

    SheetFrame(SheetHead head) {
        this.head = head;
        this.headFoot_mm = TOP_MM - 16 - EntryList.height_mm(head.inputs(), COLUMNS);
    }

    /** Where a drawing may lie. */
    Bounds room() {
        return new Bounds(
                CheckRules.BREADTH_MM + SPACE_MM,
                RULES_FOOT_MM + CheckRules.BREADTH_MM + SPACE_MM,
                WIDTH_MM,
                headFoot_mm - SPACE_MM);
    }

    Drawing page(int number, int count) {
        Sketch sketch = new Sketch();
        head(sketch);
        foot(sketch, number, count);
        sketch.put(CheckRules.at(new Point(0, RULES_FOOT_MM)));
        return sketch.drawing(head.title(), head.instrument() + ", " + head.date());
    }

    private void head(Sketch sketch) {
        sketch.words(head.title(), new Point(0, TOP_MM - 5), 6.4, Anchor.START, Face.SERIF_STRONG, Ink.INK);
        sketch.words(head.date(), new Point(WIDTH_MM, TOP_MM - 5), 3.6, Anchor.END, Face.SERIF, Ink.INK);
        sketch.words(head.instrument(), new Point(0, TOP_MM - 11), 4, Anchor.START, Face.SERIF_ITALIC, Ink.INK);
        sketch.line(new Point(0, TOP_MM - 13.5), new Point(WIDTH_MM, TOP_MM - 13.5), RULE);
        EntryList.put(sketch, head.inputs(), new Point(0, TOP_MM - 14), WIDTH_MM, COLUMNS);
    }

    private void foot(Sketch sketch, int number, int count) {
        sketch.line(new Point(0, 4.6), new Point(WIDTH_MM, 4.6), RULE);
        String left = "True to size: print at 100 %, never “fit to page” · drawn by " + head.drawnBy();
        sketch.words(left, new Point(0, 1), 2.7, Anchor.START, Face.SANS, Ink.FAINT);
        String right = "page " + number + " of " + count;
        sketch.words(right, new Point(WIDTH_MM, 1), 2.7, Anchor.END, Face.SANS, Ink.FAINT);
    }
}
