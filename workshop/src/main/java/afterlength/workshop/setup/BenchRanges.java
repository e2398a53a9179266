package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.SetupQuantity;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import java.util.List;
import java.util.Optional;

/** Faint bands behind the drawing: where the outer strings and the board line would lie with values common in the trade. */
final class BenchRanges {
    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final BridgeLook look;
    private final Sketch sketch;

    BenchRanges(BridgeShape shape, BridgeOutline outline, BridgeLook look, Sketch sketch) {
        this.shape = shape;
        this.outline = outline;
        this.look = look;
        this.sketch = sketch;
    }

    void draw() {
        BassTreble wanted_mm = shape.inputs().boardEndClearance_mm();
        find(SetupQuantity.BOARD_END_CLEARANCE_BASS).ifPresent(range -> string(0, range, wanted_mm.bass_mm()));
        find(SetupQuantity.BOARD_END_CLEARANCE_TREBLE)
                .ifPresent(range -> string(shape.strings().size() - 1, range, wanted_mm.treble_mm()));
        find(SetupQuantity.PROJECTION)
                .ifPresent(range -> band(FrontLabels.projectionX_mm(outline, look), range.low(), range.high()));
    }

    private Optional<CommonRange> find(SetupQuantity quantity) {
        return shape.findCommonSetup().flatMap(common -> common.find(quantity));
    }

    /** Clearances at the board end grow to the bridge as the string does. */
    private void string(int string, CommonRange range, double wanted_mm) {
        double lever =
                shape.inputs().speakingLength_mm() / shape.inputs().board().length_mm();
        Point centre = outline.stringCentre(string);
        band(
                centre.x_mm(),
                centre.y_mm() + lever * (range.low() - wanted_mm),
                centre.y_mm() + lever * (range.high() - wanted_mm));
    }

    private void band(double x_mm, double from_mm, double to_mm) {
        double half_mm = look.figure_mm() * 0.9;
        sketch.area(
                List.of(
                        new Point(x_mm - half_mm, from_mm),
                        new Point(x_mm + half_mm, from_mm),
                        new Point(x_mm + half_mm, to_mm),
                        new Point(x_mm - half_mm, to_mm)),
                null,
                Ink.BAND);
    }
}
