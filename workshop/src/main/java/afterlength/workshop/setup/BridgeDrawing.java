package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Length;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Sketch;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The bridge from the front as the player sees it, bass left, at 1 : 1. The origin lies on the belly under the centre line.
 * Heights stand over their strings, places across under them, the projection at the bass side; the band round the crown is
 * what the bench's reading errors leave open. Strings are discs of their true diameter. Left out: the feet, which are fitted
 * to the belly, and the heart and waist of the bridge, which are the maker's.
 */
public final class BridgeDrawing {
    private final BridgeShape shape;
    private final Sketch sketch = new Sketch();
    private final BridgeLines lines;
    private final BridgeLabels labels;

    private BridgeDrawing(BridgeShape shape, BridgeLook look) {
        BridgeOutline outline = new BridgeOutline(shape);
        this.shape = shape;
        this.lines = new BridgeLines(shape, outline, look, sketch);
        this.labels = new BridgeLabels(shape, outline, look, sketch);
    }

    /** For a page: letters and lines in proportion to the bridge. */
    public static Drawing forScreen(BridgeShape shape) {
        return new BridgeDrawing(shape, BridgeLook.forScreen(shape)).elevation(null);
    }

    /** For a 1 : 1 sheet: as a template to cut out, with the marks for the feet when their span is known. */
    public static Drawing forPaper(BridgeShape shape, @Nullable Length footSpan) {
        BridgeDrawing drawing = new BridgeDrawing(shape, BridgeLook.forPaper(shape));
        drawing.lines.sides();
        return drawing.elevation(footSpan);
    }

    private Drawing elevation(@Nullable Length footSpan) {
        lines.draw();
        labels.draw();
        if (footSpan != null) {
            labels.feet(footSpan);
        }
        return sketch.drawing("Bridge from the front", description(shape));
    }

    /** The heights in words. */
    static String description(BridgeShape shape) {
        String strings = shape.strings().stream()
                .map(string -> string.name() + " " + Figures.mm(string.woodHeight()))
                .collect(Collectors.joining(", "));
        return "Height over the belly on the centre line " + Figures.mm(shape.centreHeight()) + " ± "
                + Figures.mm(shape.heightPlusMinus()) + "; wood under the strings from bass to treble: " + strings;
    }
}
