package afterlength.workshop.agreement;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.Entry;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.SheetHead;
import afterlength.workshop.paper.SheetPdf;
import java.util.List;

/** The paper strip of a kept study, true to size, to be glued on the blank from which the cleats are cut. */
public final class CleatSheets {
    private final SettingsStore settings;
    private final String drawnBy;

    /** The last value is the program and its version, which stand on every sheet. */
    public CleatSheets(SettingsStore settings, String drawnBy) {
        this.settings = settings;
        this.drawnBy = drawnBy;
    }

    byte[] pdf(AccessLook look, String instrument) {
        AccessStudy study = look.study();
        PaperSize size = settings.get().letterPaper() ? PaperSize.LETTER : PaperSize.A4;
        String face = Figures.plain(study.cleatLengthMm()) + " × " + Figures.plain(study.cleatWidthMm()) + " mm";
        List<Entry> inputs = List.of(
                new Entry("Cleat", face + ", " + Figures.mm(study.cleatThicknessMm(), 1) + " thick"),
                new Entry("Row", AccessWords.row(look.row())));
        SheetHead head = new SheetHead(
                "Cleats for the crack", instrument, Days.words(Days.day(study.writtenAt())), inputs, drawnBy, "en");
        return SheetPdf.of(size, head, List.of(CleatStrip.of(look)));
    }
}
