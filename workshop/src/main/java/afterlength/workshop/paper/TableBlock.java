package afterlength.workshop.paper;

import java.util.List;

/** A small table on a drawing: heads above a line, a hairline under each row. */
public final class TableBlock {
    private static final double SIZE_MM = 2.9;
    private static final double ROW_MM = 4.6;
    private static final Stroke RULE = Stroke.of(Ink.INK, 0.15);
    private static final Stroke HAIRLINE = Stroke.of(Ink.FAINT, 0.08);

    private final List<Column> columns;
    private final double width_mm;

    private TableBlock(List<Column> columns) {
        this.columns = columns;
        this.width_mm = columns.stream().mapToDouble(Column::width_mm).sum();
    }

    /**
     * A column of the table.
     *
     * @param anchor START for words, END for figures
     */
    public record Column(String head, double width_mm, Anchor anchor) {}

    public static double height_mm(int rows) {
        return (rows + 1) * ROW_MM;
    }

    public static void put(Sketch sketch, Point topLeft, List<Column> columns, List<List<String>> rows) {
        TableBlock table = new TableBlock(columns);
        List<String> heads = columns.stream().map(Column::head).toList();
        table.row(sketch, topLeft.moved(0, -ROW_MM), heads, Ink.FAINT, RULE);
        for (int i = 0; i < rows.size(); i++) {
            table.row(sketch, topLeft.moved(0, -(i + 2) * ROW_MM), rows.get(i), Ink.INK, HAIRLINE);
        }
    }

    private void row(Sketch sketch, Point foot, List<String> cells, Ink ink, Stroke rule) {
        double left_mm = 0;
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            Point at = foot.moved(left_mm + column.width_mm() * column.anchor().partBefore(), 1.3);
            sketch.words(cells.get(i), at, SIZE_MM, column.anchor(), Face.SANS, ink);
            left_mm += column.width_mm();
        }
        sketch.line(foot, foot.moved(width_mm, 0), rule);
    }
}
