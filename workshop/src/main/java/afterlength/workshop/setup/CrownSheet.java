package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.PlateFlow;
import afterlength.workshop.paper.SheetHead;
import afterlength.workshop.paper.SheetPdf;
import java.util.List;

/** Templates of the crown for card: the crown, its negative, and the negative of the board, at 1 : 1. */
public final class CrownSheet {
    private static final double GAP_MM = 8;
    private static final List<String> NOTES = List.of(
            "Measure the rules first. Glue the sheet on card or thin board, let it dry flat, and cut along the heavy line; cut the"
                    + " side you keep a little proud and take it to the middle of the line with a file.",
            "The crown: lay it behind the bridge, centre line on centre line, its straight edge at the height written on it, and"
                    + " draw along the curve.",
            "The negative: lay it over the crown against the light, and take wood away where it touches until no light shows. The"
                    + " short marks show where the strings lie.",
            "The board: where its negative rocks or shows light at the end of the board, the clearances of the inner strings come"
                    + " out other than drawn.");
    private static final String CAUTION =
            "Cut card on a firm ground with a sharp knife, the fingers of the other hand behind the blade.";

    private CrownSheet() {}

    /**
     * Draws the pieces one below the other, on as many sheets as they need.
     *
     * @throws afterlength.workshop.paper.SheetTooSmall when a piece is larger than a sheet at 1 : 1
     */
    public static byte[] pdf(BridgeShape shape, BridgePaper paper) {
        SheetHead head = paper.head(
                "Crown templates, " + Figures.mm(shape.centreHeight()) + " on the centre line",
                BridgeEntries.of(shape.inputs()));
        PlateFlow flow = new PlateFlow(SheetPdf.room(head), "Crown templates", "Crown, its negative and the board");
        for (Drawing piece : List.of(CrownPiece.solid(shape), CrownPiece.hollow(shape), BoardPiece.of(shape))) {
            flow.drawing(piece);
            flow.gap(GAP_MM);
        }
        NOTES.forEach(flow::dashed);
        flow.gap(3);
        flow.caution("Caution", CAUTION);
        return SheetPdf.of(paper.size(), head, flow.plates());
    }
}
