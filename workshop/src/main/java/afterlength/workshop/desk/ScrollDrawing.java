package afterlength.workshop.desk;

import afterlength.craft.geometry.HeadSide;
import afterlength.craft.geometry.InstrumentShape;

/** The head from the bass side. */
final class ScrollDrawing {
    private static final Pen EDGE = new Pen(0.3, 0.85);
    private static final Pen DETAIL = new Pen(0.28, 0.6);
    private static final Pen FINE = new Pen(0.14, 0.2);

    private final HeadSide head;
    private final double size;

    ScrollDrawing(InstrumentShape instrument) {
        this.head = HeadSide.of(instrument);
        this.size = instrument.fittings().head_mm() / 106;
    }

    InkSheet draw() {
        InkSheet sheet = new InkSheet(0.5 * size);
        sheet.line(head.contour(), EDGE.sized(size));
        head.neckLines().forEach(line -> sheet.line(line, DETAIL.sized(size)));
        sheet.line(head.volute(), DETAIL.sized(size)).line(head.chamfer(), FINE.sized(size));
        sheet.edge(head.eye(), DETAIL.sized(size));
        head.pegEnds().forEach(peg -> sheet.washed(peg).edge(peg, DETAIL.sized(size)));
        return sheet;
    }
}
