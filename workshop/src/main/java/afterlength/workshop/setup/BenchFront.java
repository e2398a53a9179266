package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Sketch;

/**
 * The bridge on the workbench, from the front as the player sees it, bass left; origin on the belly under the centre line. Strings
 * are discs of their true diameter, the end of the board stands behind them, over each string opens a fan: the directions in which
 * the bow can press it alone. Behind the outer strings a band shows where they would lie with clearances common in the trade.
 *
 * <p>Fans have the angles of the bow at its place, and stand where the strings cross the bridge; the strings fall by some tenths of
 * a millimetre between the two, which is left out of the drawing and not of the angles. The edges of the waist lie far outside and
 * stand in {@link BodyView}.
 */
final class BenchFront {
    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch = new Sketch();

    private BenchFront(BridgeShape shape) {
        this.shape = shape;
        this.outline = new BridgeOutline(shape);
        this.look = look(shape);
    }

    static Drawing of(BridgeShape shape, BenchBow bow) {
        return new BenchFront(shape).draw(bow);
    }

    /** Letters in proportion to the whole drawing, which is fitted to the page. */
    static BridgeLook look(BridgeShape shape) {
        double figure_mm = Math.max(1.3, 2 * halfWidth_mm(shape) / 44);
        return new BridgeLook(figure_mm, figure_mm * 0.78, figure_mm * 0.045);
    }

    /** As close about the bridge as words and lines allow. */
    static double halfWidth_mm(BridgeShape shape) {
        return 0.9
                * (shape.strings().get(shape.strings().size() - 1).bridgeY().mm()
                        - shape.strings().get(0).bridgeY().mm());
    }

    private Drawing draw(BenchBow bow) {
        new BenchRanges(shape, outline, look, sketch).draw();
        FrontFans fans = new FrontFans(shape, outline, look, sketch);
        bow.findReading().ifPresent(fans::draw);
        new FrontBoard(shape, outline, look, sketch).draw();
        new BridgeLines(shape, outline, look, sketch).draw();
        new FrontLabels(shape, outline, look, sketch).draw();
        String description = BridgeDrawing.description(shape);
        return sketch.drawing("Bridge from the front, with the bow", description + ". " + BowWords.place(bow));
    }
}
