package afterlength.workshop.desk;

import afterlength.craft.geometry.Board;
import afterlength.craft.geometry.BodyOutline;
import afterlength.craft.geometry.BridgeAbove;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.HeadFront;
import afterlength.craft.geometry.InstrumentShape;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Pegs;
import afterlength.craft.geometry.SoundHole;
import afterlength.craft.geometry.Strings;
import afterlength.craft.geometry.Tailpiece;
import java.util.List;

/** The front as the player sees it on the stand: bass left. What lies under board, bridge and tailpiece is not drawn. */
final class FrontDrawing {
    /** Strokes on a violin; larger instruments are drawn with a broader pen. */
    private static final Pen EDGE = new Pen(0.75, 2.0);

    private static final Pen FITTING = new Pen(0.65, 1.35);
    private static final Pen DETAIL = new Pen(0.5, 0.8);
    private static final Pen FINE = new Pen(0.32, 0.42);
    private static final double[] STRING_MM = {0.85, 0.75, 0.65, 0.5};

    /** Purfling: outer line from the edge, and breadth of the strip; common practice. */
    static final double PURFLING_MM = 4.0;

    static final double PURFLING_BREADTH_MM = 1.3;

    private final InstrumentShape instrument;
    private final double size;
    private final InkSheet sheet;
    private final Outline board;
    private final Outline tailpiece;
    private final Outline saddle;
    private final Outline bridge;

    FrontDrawing(InstrumentShape instrument) {
        this.instrument = instrument;
        this.size = instrument.body().length_mm() / 355;
        this.sheet = new InkSheet(0.8 * size);
        this.board = Board.of(instrument).outline(size);
        this.tailpiece = Tailpiece.of(instrument).outline(size);
        this.saddle = Tailpiece.saddle(instrument).outline(size);
        this.bridge = BridgeAbove.of(instrument).outline(size);
    }

    InkSheet draw() {
        drawBody();
        drawSoundHoles();
        drawBoard();
        drawHead();
        drawTail();
        drawStrings();
        return sheet;
    }

    private void drawBody() {
        Outline edge = BodyOutline.of(instrument.body()).outline(0.8 * size);
        sheet.lines(edge.edgeOutside(List.of(board)), EDGE.sized(size));
        double purfling_mm = PURFLING_MM * instrument.stoutness();
        double breadth_mm = PURFLING_BREADTH_MM * instrument.stoutness();
        List<Outline> covers = List.of(board, tailpiece, saddle);
        sheet.lines(edge.inset(purfling_mm).edgeOutside(covers), FINE.sized(size));
        sheet.lines(edge.inset(purfling_mm + breadth_mm).edgeOutside(covers), FINE.sized(size));
    }

    private void drawSoundHoles() {
        Curve treble = SoundHole.treble(instrument);
        for (Curve hole : List.of(treble, treble.mirrored().reversed())) {
            sheet.washed(hole).edge(hole, DETAIL.sized(size));
            sheet.lines(hole.outline(0.5 * size).hatched(-38, 1.15 * size), FINE.sized(size * 1.35));
        }
    }

    private void drawBoard() {
        sheet.washed(Board.of(instrument)).edge(Board.of(instrument), FITTING.sized(size));
        sheet.edge(Board.nut(instrument), DETAIL.sized(size));
    }

    private void drawHead() {
        HeadFront head = HeadFront.of(instrument);
        Outline silhouette = head.silhouette().outline(0.8 * size);
        Outline nut = Board.nut(instrument).outline(size);
        sheet.lines(silhouette.edgeOutside(List.of(nut)), FITTING.sized(size));
        sheet.washed(head.pegbox()).edge(head.pegbox(), DETAIL.sized(size));
        for (Curve turn : head.turns()) {
            sheet.line(turn, DETAIL.sized(size)).line(turn.mirrored(), DETAIL.sized(size));
        }
        Pegs.of(instrument)
                .forEach(peg -> sheet.lines(
                        peg.outline(0.5 * size).edgeOutside(List.of(silhouette)), DETAIL.sized(size * 1.1)));
        Pegs.shanks(instrument).forEach(shank -> sheet.edge(shank, FINE.sized(size * 1.3)));
    }

    private void drawTail() {
        sheet.washed(Tailpiece.of(instrument)).edge(Tailpiece.of(instrument), FITTING.sized(size));
        sheet.line(Tailpiece.fret(instrument), DETAIL.sized(size));
        sheet.lines(saddle.edgeOutside(List.of(tailpiece)), DETAIL.sized(size));
        sheet.edge(Tailpiece.endButton(instrument), FITTING.sized(size));
        Tailpiece.cord(instrument).forEach(leg -> sheet.line(leg, DETAIL.sized(size)));
        sheet.edge(bridge, FITTING.sized(size)).line(BridgeAbove.crown(instrument), DETAIL.sized(size));
    }

    private void drawStrings() {
        List<Curve> strings = Strings.of(instrument);
        List<Curve> inPegbox = Strings.inPegbox(instrument);
        for (int i = 0; i < strings.size(); i++) {
            double breadth_mm = STRING_MM[i] * size * 0.8;
            sheet.thread(strings.get(i), breadth_mm).thread(inPegbox.get(i), breadth_mm * 0.8);
        }
    }
}
