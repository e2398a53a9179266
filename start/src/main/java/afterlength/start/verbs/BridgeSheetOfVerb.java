package afterlength.start.verbs;

import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Days;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.setup.BridgePaper;
import afterlength.workshop.setup.BridgeSheet;
import java.time.LocalDate;

/** The bridge sheet of a document: the same that the workshop prints. */
record BridgeSheetOfVerb(BridgeShape shape, BridgeDocument document) implements Sheet {
    @Override
    public byte[] pdf(PaperSize size, LocalDate day, String drawnBy) {
        return BridgeSheet.pdf(shape, paper(size, day, drawnBy));
    }

    @Override
    public String svg(LocalDate day, String drawnBy) {
        return BridgeSheet.svg(shape, paper(PaperSize.A4, day, drawnBy));
    }

    private BridgePaper paper(PaperSize size, LocalDate day, String drawnBy) {
        return new BridgePaper(document.instrument(), Days.words(day), drawnBy, size, false, document.footSpan());
    }
}
