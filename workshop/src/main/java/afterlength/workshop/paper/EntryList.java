package afterlength.workshop.paper;

import java.util.List;

/**
 * Figures with their names in columns, each name at the left and its figure at the right of a hairline, read down the first
 * column and then down the next.
 */
public final class EntryList {
    private static final double SIZE_MM = 2.9;
    private static final double GAP_MM = 8;
    private static final double LINE_MM = 4.6;
    private static final Stroke RULE = Stroke.of(Ink.FAINT, 0.08);

    private final List<Entry> entries;
    private final double column_mm;
    private final int rows;

    private EntryList(List<Entry> entries, double width_mm, int columns) {
        this.entries = entries;
        this.column_mm = (width_mm - (columns - 1) * GAP_MM) / columns;
        this.rows = (entries.size() + columns - 1) / columns;
    }

    /** Height the list will take. */
    public static double height_mm(List<Entry> entries, int columns) {
        return new EntryList(entries, 0, columns).rows * LINE_MM;
    }

    public static void put(Sketch sketch, List<Entry> entries, Point topLeft, double width_mm, int columns) {
        new EntryList(entries, width_mm, columns).put(sketch, topLeft);
    }

    private void put(Sketch sketch, Point topLeft) {
        for (int i = 0; i < entries.size(); i++) {
            int column = i / rows;
            double right_mm = column * (column_mm + GAP_MM);
            double down_mm = (i % rows + 1) * LINE_MM;
            put(sketch, entries.get(i), topLeft.moved(right_mm, -down_mm));
        }
    }

    private void put(Sketch sketch, Entry entry, Point foot) {
        Point base = foot.moved(0, 1.3);
        double value_mm = Lettering.width_mm(Face.SANS, entry.value(), SIZE_MM);
        double name_mm = Lettering.width_mm(Face.SANS, entry.name(), SIZE_MM);
        double size_mm = Math.max(1, SIZE_MM * Math.min(1, (column_mm - value_mm - 1.5) / name_mm));
        sketch.words(entry.name(), base, size_mm, Anchor.START, Face.SANS, Ink.FAINT);
        sketch.words(entry.value(), base.moved(column_mm, 0), SIZE_MM, Anchor.END, Face.SANS, Ink.INK);
        sketch.line(foot, foot.moved(column_mm, 0), RULE);
    }
}
