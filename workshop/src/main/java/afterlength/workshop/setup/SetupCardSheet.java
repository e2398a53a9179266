package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.paper.PlateFlow;
import afterlength.workshop.paper.SheetHead;
import afterlength.workshop.paper.SheetPdf;
import java.util.List;

/** The sheet with the card for the case, to cut out. */
final class SetupCardSheet {
    private SetupCardSheet() {}

    static byte[] pdf(BridgeShape shape, BridgePaper paper, CardFacts facts) {
        SheetHead head = paper.head("Set-up card for the case", List.of());
        PlateFlow flow = new PlateFlow(SheetPdf.room(head), "Set-up card", "To cut out for the lid of the case");
        flow.drawing(SetupCard.of(shape, paper, facts));
        flow.gap(4);
        flow.dashed(
                "Cut along the broken line. Where a line is empty, nothing was measured: write it in with a pencil.");
        flow.dashed(
                "Heights of the bridge are those it was drawn with; the ± is what usual reading errors leave open.");
        return SheetPdf.of(paper.size(), head, flow.plates());
    }
}
