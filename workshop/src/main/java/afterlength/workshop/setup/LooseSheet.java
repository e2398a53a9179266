package afterlength.workshop.setup;

import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Bounds;
import afterlength.workshop.paper.CheckRules;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.EntryList;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.SheetHead;
import afterlength.workshop.paper.Sketch;

/**
 * A drawing with both check rules beside it and its head below it, as large as it needs to be: for a file without pages, where a
 * cutter follows the lines.
 */
final class LooseSheet {
    /** Room of a check rule with its words. */
    private static final double RULE_MM = 14;

    private static final double WIDTH_MM = 170;
    private static final int COLUMNS = 2;

    private LooseSheet() {}

    static Drawing of(SheetHead head, Drawing drawing) {
        Bounds bounds = drawing.bounds();
        Point corner = new Point(bounds.left_mm() - RULE_MM, bounds.bottom_mm() - RULE_MM);
        Sketch words = new Sketch();
        words.words(head.title(), corner.moved(0, -8), 5, Anchor.START, Face.SERIF_STRONG, Ink.INK);
        words.words(head.instrument(), corner.moved(0, -14), 4, Anchor.START, Face.SERIF_ITALIC, Ink.INK);
        String drawn = head.date() + " · drawn by " + head.drawnBy();
        words.words(drawn, corner.moved(0, -19), 3, Anchor.START, Face.SANS, Ink.FAINT);
        EntryList.put(words, head.inputs(), corner.moved(0, -22), WIDTH_MM, COLUMNS);
        return drawing.with(CheckRules.at(corner)).with(words.drawing(head.title(), head.instrument()));
    }
}
