package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.TableBlock;
import afterlength.workshop.paper.TextBlock;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A small card for the lid of the case, in plain words, so that whoever sets the instrument up next sees how it went home. Lines
 * are left for the pencil where nothing was measured.
 */
final class SetupCard {
    private static final double WIDTH_MM = 132;
    private static final double EDGE_MM = 6;
    private static final double NAME_MM = 46;
    private static final double LINE_MM = 5.4;
    private static final double SIZE_MM = 3;
    private static final Stroke HAIRLINE = Stroke.of(Ink.FAINT, 0.08);
    private static final List<TableBlock.Column> COLUMNS = List.of(
            new TableBlock.Column("string", 20, Anchor.START),
            new TableBlock.Column("thick, mm", 24, Anchor.END),
            new TableBlock.Column("bridge under it, mm", 38, Anchor.END),
            new TableBlock.Column("over the board end, mm", 38, Anchor.END));
    private static final String MEANING =
            "“Over the board end” is from the end of the fingerboard to the underside of the string."
                    + " Heights rise and fall a little with the damp of the air. If one has changed and stays so, or the bridge leans, show"
                    + " it to your violin maker. Change strings one at a time: with all of them slack the post may fall.";

    private final BridgeShape shape;
    private final BridgePaper paper;
    private final CardFacts facts;
    private final Sketch sketch = new Sketch();
    private double down_mm = EDGE_MM;

    private SetupCard(BridgeShape shape, BridgePaper paper, CardFacts facts) {
        this.shape = shape;
        this.paper = paper;
        this.facts = facts;
    }

    static Drawing of(BridgeShape shape, BridgePaper paper, CardFacts facts) {
        return new SetupCard(shape, paper, facts).draw();
    }

    private Drawing draw() {
        heading();
        table();
        line("Bridge, in the middle", Figures.mm(shape.centreHeight()) + " ± " + Figures.mm(shape.heightPlusMinus()));
        line("  as measured on it", facts.bridgeHeight());
        line("Outer strings over the board end, measured", facts.boardEnd());
        line("Outer strings apart at the bridge", apart());
        line("String behind the bridge", facts.afterLength());
        line("Post, from the treble foot", facts.post());
        line("Air of the day", facts.air());
        meaning();
        cutLine();
        return sketch.drawing("Set-up card", "Strings, heights and places of the set-up, to cut out for the case");
    }

    private void heading() {
        words(paper.instrument(), 4.2, Face.SERIF_STRONG, Ink.INK);
        words(
                "Set up as of " + paper.date() + (paper.invented() ? " · demonstration, all of it invented" : ""),
                SIZE_MM,
                Face.SERIF_ITALIC,
                Ink.INK);
        down_mm += 1;
    }

    private void words(String words, double size_mm, Face face, Ink ink) {
        TextBlock block = TextBlock.set(words, at(0), WIDTH_MM - 2 * EDGE_MM, size_mm, face, ink);
        sketch.putAll(block.lines());
        down_mm += block.height_mm();
    }

    private Point at(double right_mm) {
        return new Point(EDGE_MM + right_mm, -down_mm);
    }

    private void table() {
        List<List<String>> rows =
                IntStream.range(0, shape.strings().size()).mapToObj(this::row).toList();
        TableBlock.put(sketch, at(0), COLUMNS, rows);
        down_mm += TableBlock.height_mm(rows.size()) + 2;
    }

    private List<String> row(int index) {
        SeatedString string = shape.strings().get(index);
        return List.of(
                string.name(),
                Figures.hundredths(shape.inputs().strings().get(index).diameter_mm()),
                Figures.tenths(string.woodHeight()),
                Figures.tenths(string.boardEndClearance()));
    }

    private String apart() {
        List<SeatedString> strings = shape.strings();
        double apart_mm = strings.get(strings.size() - 1).bridgeY().mm()
                - strings.get(0).bridgeY().mm();
        return Figures.tenths(apart_mm) + " mm, centre to centre";
    }

    /** A name and its figure, or an empty line to write on. */
    private void line(String name, String figure) {
        down_mm += LINE_MM;
        Point foot = at(0);
        sketch.words(name, foot.moved(0, 1.2), SIZE_MM, Anchor.START, Face.SANS, Ink.FAINT);
        sketch.words(figure, foot.moved(NAME_MM + 22, 1.2), SIZE_MM, Anchor.START, Face.SANS, Ink.INK);
        sketch.line(foot, foot.moved(WIDTH_MM - 2 * EDGE_MM, 0), HAIRLINE);
    }

    private void meaning() {
        down_mm += 2;
        words(MEANING, 2.6, Face.SERIF, Ink.INK);
    }

    private void cutLine() {
        double height_mm = down_mm + EDGE_MM / 2;
        List<Point> corners = List.of(
                new Point(0, 0), new Point(WIDTH_MM, 0), new Point(WIDTH_MM, -height_mm), new Point(0, -height_mm));
        sketch.area(corners, Stroke.dashed(Ink.INK, 0.15, 1.6, 1), null);
    }
}
