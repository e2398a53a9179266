package afterlength.workshop.setup;

import afterlength.craft.setup.BowReading;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.Waist;
import afterlength.craft.units.Angle;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.Optional;

/** Bridge and waist in one small drawing: the edges, and the bow lying on either outer string and its edge. */
final class BodyView {
    private final BridgeShape shape;
    private final BridgeOutline outline;
    private final Waist waist;
    private final double size_mm;
    private final Sketch sketch = new Sketch();

    private BodyView(BridgeShape shape, Waist waist) {
        this.shape = shape;
        this.waist = waist;
        outline = new BridgeOutline(shape);
        size_mm = Math.max(1, waist.width_mm() / 26);
    }

    /** Empty while the waist is not measured. */
    static Optional<Drawing> find(BridgeShape shape, BenchBow bow) {
        return Optional.ofNullable(shape.inputs().waist())
                .map(waist -> new BodyView(shape, waist).draw(bow.findReading()));
    }

    private Drawing draw(Optional<BowReading> reading) {
        sketch.curve(outline.crown(), Stroke.of(Ink.ACCENT, size_mm * 0.09));
        double half_mm = outline.trebleEnd().x_mm();
        sketch.line(new Point(-half_mm * 1.2, 0), new Point(half_mm * 1.2, 0), Stroke.of(Ink.INK, size_mm * 0.08));
        for (int string = 0; string < shape.strings().size(); string++) {
            double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
            sketch.disc(outline.stringCentre(string), radius_mm, null, Ink.INK);
        }
        edge(-1, Anchor.START);
        edge(1, Anchor.END);
        int last = shape.strings().size() - 1;
        reading.flatMap(read -> read.strings().get(0).findLimitBass()).ifPresent(limit -> bow(0, limit, -1));
        reading.flatMap(read -> read.strings().get(last).findLimitTreble()).ifPresent(limit -> bow(last, limit, 1));
        return sketch.drawing(
                "Bridge and waist",
                "The edges of the waist stand " + Figures.mm(waist.width_mm(), 1) + " apart, "
                        + Figures.mm(waist.edgeDrop_mm(), 1) + " below the belly at the bridge.");
    }

    private Point edgePoint(int side) {
        return new Point(side * waist.width_mm() / 2, -waist.edgeDrop_mm());
    }

    private void edge(int side, Anchor anchor) {
        Point edge = edgePoint(side);
        Point inner = edge.moved(-side * 6 * size_mm, 0);
        Stroke stroke = Stroke.of(Ink.INK, size_mm * 0.08);
        sketch.line(edge, edge.moved(0, -1.6 * size_mm), stroke).line(edge, inner, stroke);
        Point belly = new Point(side * outline.trebleEnd().x_mm() * 1.2, 0);
        sketch.line(inner, belly, Stroke.dashed(Ink.FAINT, size_mm * 0.06, 1, 1));
        String words =
                Figures.fixed(waist.width_mm() / 2, 1) + " aside, " + Figures.fixed(waist.edgeDrop_mm(), 1) + " below";
        Point under = edge.moved(-side * 0.6 * size_mm, -1.5 * size_mm);
        sketch.words(words, under, size_mm, anchor, Face.SANS, Ink.FAINT);
    }

    /** The bow on an outer string and the edge, carried on over the strings to the other side. */
    private void bow(int string, Angle limit, int side) {
        double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
        Point on = outline.stringCentre(string)
                .moved(-radius_mm * Math.sin(limit.rad()), radius_mm * Math.cos(limit.rad()));
        double on_mm = 5 * size_mm;
        Point beyond = on.moved(-side * on_mm * Math.cos(limit.rad()), -side * on_mm * Math.sin(limit.rad()));
        sketch.line(edgePoint(side), beyond, Stroke.dashed(Ink.INK, size_mm * 0.06, size_mm * 0.7, size_mm * 0.35));
    }
}
