package afterlength.workshop.desk;

import afterlength.craft.geometry.Board;
import afterlength.craft.geometry.BodyOutline;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.HeadFront;
import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Pegs;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.Tailpiece;
import java.util.List;

/** The back, treble left: one joint down the middle, purfling, button, neck, head. */
final class BackDrawing {
    private static final Pen EDGE = new Pen(0.75, 2.0);
    private static final Pen FITTING = new Pen(0.65, 1.35);
    private static final Pen DETAIL = new Pen(0.5, 0.8);
    private static final Pen FINE = new Pen(0.32, 0.42);

    private final InstrumentShape instrument;
    private final double size;
    private final InkSheet sheet;

    BackDrawing(InstrumentShape instrument) {
        this.instrument = instrument;
        this.size = instrument.body().length_mm() / 355;
        this.sheet = new InkSheet(0.8 * size);
    }

    InkSheet draw() {
        drawBody();
        drawNeck();
        drawHead();
        return sheet;
    }

    private void drawBody() {
        Outline edge = BodyOutline.of(instrument.body()).outline(0.8 * size);
        Outline button = Board.button(instrument).outline(size);
        Outline neck = Board.neckBack(instrument).outline(size);
        sheet.lines(edge.edgeOutside(List.of(button, neck)), EDGE.sized(size));
        double purfling_mm = FrontDrawing.PURFLING_MM * instrument.stoutness();
        sheet.edge(edge.inset(purfling_mm), FINE.sized(size));
        sheet.edge(
                edge.inset(purfling_mm + FrontDrawing.PURFLING_BREADTH_MM * instrument.stoutness()), FINE.sized(size));
        sheet.line(
                Curve.line(
                        Point.of(0, purfling_mm * 1.5),
                        Point.of(0, instrument.body().length_mm() - purfling_mm * 1.5)),
                FINE.sized(size));
        sheet.edge(Tailpiece.endButton(instrument), FITTING.sized(size));
    }

    private void drawNeck() {
        Outline body = BodyOutline.of(instrument.body()).outline(0.8 * size);
        Outline button = Board.button(instrument).outline(0.5 * size);
        sheet.lines(button.edgeOutside(List.of(body)), FITTING.sized(size));
        sheet.lines(Board.neckBack(instrument).outline(size).edgeOutside(List.of(body)), FITTING.sized(size));
        sheet.line(Board.heel(instrument), DETAIL.sized(size))
                .line(Board.heel(instrument).mirrored(), DETAIL.sized(size));
    }

    private void drawHead() {
        HeadFront head = HeadFront.of(instrument);
        Outline silhouette = head.silhouette().outline(0.8 * size);
        Outline neck = Board.neckBack(instrument).outline(size);
        sheet.lines(silhouette.edgeOutside(List.of(neck)), FITTING.sized(size));
        sheet.line(head.spine(), FINE.sized(size));
        sheet.line(head.flute(), DETAIL.sized(size)).line(head.flute().mirrored(), DETAIL.sized(size));
        Pegs.of(instrument)
                .forEach(peg -> sheet.lines(
                        peg.mirrored().reversed().outline(0.5 * size).edgeOutside(List.of(silhouette)),
                        DETAIL.sized(size * 1.1)));
    }
}
