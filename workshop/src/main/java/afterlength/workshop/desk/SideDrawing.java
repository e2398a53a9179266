package afterlength.workshop.desk;

import afterlength.craft.geometry.BodySide;
import afterlength.craft.geometry.HeadSide;
import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.NeckSide;

/** The whole instrument from its bass side, belly to the right. */
final class SideDrawing {
    private static final Pen EDGE = new Pen(0.7, 1.5);
    private static final Pen DETAIL = new Pen(0.5, 0.9);
    private static final Pen FINE = new Pen(0.32, 0.42);

    private final InstrumentShape instrument;
    private final double size;
    private final InkSheet sheet;

    SideDrawing(InstrumentShape instrument) {
        this.instrument = instrument;
        this.size = instrument.body().length_mm() / 355;
        this.sheet = new InkSheet(0.8 * size);
    }

    InkSheet draw() {
        BodySide body = BodySide.of(instrument);
        sheet.edge(body.belly(), EDGE.sized(size)).edge(body.back().reversed(), EDGE.sized(size));
        sheet.edge(body.ribs(), DETAIL.sized(size));
        body.corners().forEach(corner -> sheet.line(corner, FINE.sized(size)));
        drawNeck(NeckSide.of(instrument));
        return sheet;
    }

    private void drawNeck(NeckSide neck) {
        sheet.edge(neck.neck(), DETAIL.sized(size)).washed(neck.board()).edge(neck.board(), DETAIL.sized(size));
        sheet.edge(neck.bridge(), DETAIL.sized(size));
        sheet.washed(neck.tailpiece()).edge(neck.tailpiece(), DETAIL.sized(size));
        sheet.line(neck.string(), FINE.sized(size));
        HeadSide head = HeadSide.of(instrument);
        sheet.line(neck.onNeck(head.contour()), EDGE.sized(size));
        sheet.line(neck.onNeck(head.volute()), DETAIL.sized(size)).edge(neck.onNeck(head.eye()), FINE.sized(size));
        head.pegEnds().forEach(peg -> sheet.edge(neck.onNeck(peg), FINE.sized(size)));
    }
}
