package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Bounds;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.SheetHead;
import afterlength.workshop.paper.SheetPdf;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.TableBlock;
import afterlength.workshop.paper.TextBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The bridge on paper at 1 : 1: a template to cut out, what it was drawn from, the heights string by string, everything that
 * should be known beside the numbers, and what to mind while the strings are off. Caveats that find no room on the first
 * sheet are carried to the next.
 */
public final class BridgeSheet {
    private static final double TEXT_MM = 3.1;
    private static final double GAP_MM = 6;
    private static final List<TableBlock.Column> COLUMNS = List.of(
            new TableBlock.Column("string", 14, Anchor.START),
            new TableBlock.Column("diameter", 15, Anchor.END),
            new TableBlock.Column("from centre", 19, Anchor.END),
            new TableBlock.Column("wood", 14, Anchor.END),
            new TableBlock.Column("board end", 18, Anchor.END));
    private static final double TABLE_MM = 80;

    private final BridgeShape shape;
    private final BridgePaper paper;
    private final SheetHead head;

    private BridgeSheet(BridgeShape shape, BridgePaper paper) {
        this.shape = shape;
        this.paper = paper;
        this.head = new SheetHead(
                "Bridge, " + Figures.mm(shape.centreHeight()) + " on the centre line",
                paper.instrument(),
                paper.date(),
                BridgeEntries.of(shape.inputs()),
                paper.drawnBy(),
                "en");
    }

    public static byte[] pdf(BridgeShape shape, BridgePaper paper) {
        BridgeSheet sheet = new BridgeSheet(shape, paper);
        return SheetPdf.of(paper.size(), sheet.head, sheet.plates());
    }

    private List<Drawing> plates() {
        Drawing template = BridgeDrawing.forPaper(shape, paper.footSpan());
        Bounds drawn = template.bounds();
        Bounds room = SheetPdf.room(head);
        double aside_mm = (room.width_mm() - drawn.width_mm()) / 2 - drawn.left_mm();
        Sketch sketch = new Sketch().put(template.moved(aside_mm, -drawn.top_mm()));
        double top_mm = -drawn.height_mm() - GAP_MM;
        table(sketch, new Point(0, top_mm));
        double tableFoot_mm = top_mm - TableBlock.height_mm(shape.strings().size());
        double notes_mm = room.width_mm() - TABLE_MM - GAP_MM;
        double notesFoot_mm = paragraphs(sketch, notes(), new Point(TABLE_MM + GAP_MM, top_mm), notes_mm);
        double foot_mm = Math.min(tableFoot_mm, notesFoot_mm) - GAP_MM;
        foot_mm = cautions(sketch, new Point(0, foot_mm), room.width_mm()) - GAP_MM;
        return withCaveats(sketch, foot_mm, room);
    }

    private List<Drawing> withCaveats(Sketch sketch, double foot_mm, Bounds room) {
        List<Drawing> plates = new ArrayList<>();
        Sketch onThis = sketch;
        double top_mm = foot_mm;
        for (String caveat : shape.caveats().stream().map(BridgeWords::of).toList()) {
            TextBlock block = text("– " + caveat, new Point(0, top_mm), room.width_mm());
            if (block.height_mm() - top_mm > room.height_mm()) {
                plates.add(plate(onThis));
                onThis = new Sketch();
                block = text("– " + caveat, new Point(0, 0), room.width_mm());
                top_mm = 0;
            }
            onThis.putAll(block.lines());
            top_mm -= block.height_mm();
        }
        plates.add(plate(onThis));
        return plates;
    }

    private void table(Sketch sketch, Point topLeft) {
        List<List<String>> rows =
                IntStream.range(0, shape.strings().size()).mapToObj(this::row).toList();
        TableBlock.put(sketch, topLeft, COLUMNS, rows);
    }

    private List<String> row(int index) {
        SeatedString string = shape.strings().get(index);
        return List.of(
                string.name(),
                Figures.hundredths(shape.inputs().strings().get(index).diameter_mm()),
                Figures.tenths(string.bridgeY()),
                Figures.tenths(string.woodHeight()),
                Figures.tenths(string.boardEndClearance()));
    }

    private List<String> notes() {
        String open = Figures.mm(shape.heightPlusMinus());
        return List.of(
                "Fit the feet first. Then cut out along the heavy line and the broken sides, and lay the belly line and the "
                        + "centre line on the bridge.",
                "Heights are to the wood, over the belly under the centre line: not from the feet, which stand a little lower "
                        + "on the arch. Usual reading errors leave ± " + open + " open; cut to the upper line first.",
                "“Board end” is from the board to the underside of the string.");
    }

    /** A rule at the side and a word in front, so that colour is not the only sign. */
    private static double cautions(Sketch sketch, Point topLeft, double width_mm) {
        Point inner = topLeft.moved(4, 0);
        TextBlock title = TextBlock.set("Caution", inner, width_mm, TEXT_MM, Face.SANS_STRONG, Ink.ACCENT);
        TextBlock words = text(
                "Loosen and change one string at a time: when all tension is gone the post can fall. If it has fallen, set it "
                        + "before a string is tightened again; do not tune the instrument without it. Keep your eyes out of line "
                        + "with a string under tension. Watch the bridge while tuning and draw it upright before it leans.",
                inner.moved(0, -title.height_mm()),
                width_mm - 4);
        double height_mm = title.height_mm() + words.height_mm();
        sketch.putAll(title.lines()).putAll(words.lines());
        sketch.line(topLeft.moved(0.5, 0), topLeft.moved(0.5, -height_mm - 0.8), Stroke.of(Ink.ACCENT, 0.7));
        return topLeft.y_mm() - height_mm;
    }

    private static double paragraphs(Sketch sketch, List<String> paragraphs, Point topLeft, double width_mm) {
        double top_mm = topLeft.y_mm();
        for (String paragraph : paragraphs) {
            TextBlock block = text(paragraph, new Point(topLeft.x_mm(), top_mm), width_mm);
            sketch.putAll(block.lines());
            top_mm -= block.height_mm() + 0.4 * TEXT_MM;
        }
        return top_mm;
    }

    private static TextBlock text(String words, Point topLeft, double width_mm) {
        return TextBlock.set(words, topLeft, width_mm, TEXT_MM, Face.SERIF, Ink.INK);
    }

    private static Drawing plate(Sketch sketch) {
        return sketch.drawing("Bridge template", "The bridge from the front at 1:1 with its figures and cautions");
    }
}
