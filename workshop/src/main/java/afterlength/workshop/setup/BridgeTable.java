package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.TableBlock;
import java.util.List;
import java.util.stream.IntStream;

/** The bridge string by string, with a column left empty for what was measured on the finished one. */
final class BridgeTable {
    static final double WIDTH_MM = 96;

    private static final List<TableBlock.Column> COLUMNS = List.of(
            new TableBlock.Column("string", 14, Anchor.START),
            new TableBlock.Column("diameter", 15, Anchor.END),
            new TableBlock.Column("from centre", 19, Anchor.END),
            new TableBlock.Column("wood", 14, Anchor.END),
            new TableBlock.Column("board end", 18, Anchor.END),
            new TableBlock.Column("as cut", 16, Anchor.END));

    private BridgeTable() {}

    static double height_mm(BridgeShape shape) {
        return TableBlock.height_mm(shape.strings().size());
    }

    static void put(Sketch sketch, Point topLeft, BridgeShape shape) {
        List<List<String>> rows = IntStream.range(0, shape.strings().size())
                .mapToObj(string -> row(shape, string))
                .toList();
        TableBlock.put(sketch, topLeft, COLUMNS, rows);
    }

    private static List<String> row(BridgeShape shape, int index) {
        SeatedString string = shape.strings().get(index);
        return List.of(
                string.name(),
                Figures.hundredths(shape.inputs().strings().get(index).diameter_mm()),
                Figures.tenths(string.bridgeY()),
                Figures.tenths(string.woodHeight()),
                Figures.tenths(string.boardEndClearance()),
                "");
    }
}
