package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import afterlength.sight.card.Rectangle;
import afterlength.sight.card.Segment;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import afterlength.workshop.paper.Swatch;
import afterlength.workshop.paper.SwatchPdf;
import java.util.ArrayList;
import java.util.List;

/**
 * A measuring card on its sheet of paper, true to size: the squares, rule and patches of {@link Card}, where to cut, and what to
 * do beside it. The body card for A4 is longer than the one for Letter, as the sheet is.
 */
public final class CardSheet {
    private static final Stroke THIN = Stroke.of(Ink.INK, 0.15);
    private static final Stroke CHECK = Stroke.of(Ink.INK, 0.2);
    private static final Stroke CUT = Stroke.of(Ink.FAINT, 0.1);
    private static final double LINE_MM = 4.6;

    private final Card card;
    private final int number;
    private final double left_mm;
    private final double top_mm;

    private CardSheet(Card card, PaperSize size, int number) {
        this.card = card;
        this.number = number;
        double broad_mm = card.isBody() ? card.width_mm() : 100;
        double high_mm = card.isBody() ? card.height_mm() : 100;
        this.left_mm = (size.width_mm() - broad_mm) / 2;
        this.top_mm = (size.height_mm() + high_mm) / 2;
    }

    /** The body card that fits on this paper. */
    public static Card body(PaperSize size) {
        return size == PaperSize.A4 ? Card.BODY : Card.BODY_LETTER;
    }

    /** The sheet as PDF; the number tells one printed card from another, since each has its own check lines. */
    public static byte[] pdf(Card card, PaperSize size, int number, String drawnBy) {
        CardSheet sheet = new CardSheet(card, size, number);
        return SwatchPdf.of(size, sheet.title(), drawnBy, sheet.swatches(), sheet.drawing());
    }

    private String title() {
        return (card.isBody() ? "Body card " : "Pocket card ") + number;
    }

    private List<Swatch> swatches() {
        List<Swatch> swatches = new ArrayList<>();
        card.squares().forEach(square -> swatches.add(swatch(square, 0, 0, 0)));
        card.patches()
                .forEach(patch ->
                        swatches.add(swatch(patch.place(), patch.red_pct(), patch.green_pct(), patch.blue_pct())));
        return swatches;
    }

    private Swatch swatch(Rectangle place, int red_pct, int green_pct, int blue_pct) {
        Point corner = onPage(place.left_mm(), place.top_mm() + place.height_mm());
        return new Swatch(
                corner, place.width_mm(), place.height_mm(), red_pct / 100.0, green_pct / 100.0, blue_pct / 100.0);
    }

    private Drawing drawing() {
        Sketch sketch = new Sketch();
        sketch.area(
                card.outline().stream()
                        .map(place -> onPage(place.x_mm(), place.y_mm()))
                        .toList(),
                CUT,
                null);
        card.rule().forEach(tick -> line(sketch, tick, THIN));
        card.checkLines().forEach(line -> line(sketch, line, CHECK));
        name(sketch);
        words(sketch);
        return sketch.drawing(
                title(), "Squares, a millimetre rule, patches and two check lines of 100 mm; true to size");
    }

    private void line(Sketch sketch, Segment line, Stroke stroke) {
        sketch.line(
                onPage(line.from().x_mm(), line.from().y_mm()),
                onPage(line.to().x_mm(), line.to().y_mm()),
                stroke);
    }

    /** On the card itself, along its free edge. */
    private void name(Sketch sketch) {
        Point at = card.isBody() ? onPage(28.5, card.height_mm() - Card.ARM_MM - 10) : onPage(57.5, 72);
        sketch.turnedWords(title(), at, 2.4, Anchor.START, 90, Face.SANS, Ink.INK);
    }

    private void words(Sketch sketch) {
        double x_mm = card.isBody() ? Card.ARM_MM + 12 : 0;
        double y_mm = card.isBody() ? 20 : 112;
        List<String> lines = List.of(
                "Print at 100 %, on matt paper, never “fit to page”.",
                "Measure both check lines of 100 mm with a steel rule to 0.1 mm and note them with this card’s number.",
                "Cut along the faint line and glue the card flat on stiff board. Keep it dark and dry; print it anew when",
                "it fades or bends. Lay it at the height of what is measured: 15 mm higher or lower make 3 %.",
                "The patches carry colour from one photograph to the next; they are no colour standard.");
        sketch.words(title(), onPage(x_mm, y_mm), 5, Anchor.START, Face.SERIF_STRONG, Ink.INK);
        for (int n = 0; n < lines.size(); n++) {
            sketch.words(lines.get(n), onPage(x_mm, y_mm + 8 + n * LINE_MM), 2.8, Anchor.START, Face.SANS, Ink.INK);
        }
    }

    /** From the card's corner, down and to the right, to the page's, upwards. */
    private Point onPage(double x_mm, double y_mm) {
        return new Point(left_mm + x_mm, top_mm - y_mm);
    }
}
