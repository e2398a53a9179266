package afterlength.workshop.setup;

import afterlength.craft.units.Length;
import afterlength.workshop.paper.Entry;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.SheetHead;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a sheet of the set-up says beside the shape.
 *
 * @param instrument which instrument it is for
 * @param date when it was drawn, in words
 * @param drawnBy the program and its version
 * @param invented whether the instrument is one of the demonstration, which every sheet then says
 * @param footSpan over the outer edges of both feet, or null when it was not measured
 */
public record BridgePaper(
        String instrument,
        String date,
        String drawnBy,
        PaperSize size,
        boolean invented,
        @Nullable Length footSpan) {

    /** The head of a sheet. */
    SheetHead head(String title, List<Entry> inputs) {
        String whose = invented ? instrument + " – demonstration, instrument and figures are invented" : instrument;
        return new SheetHead(title, whose, date, inputs, drawnBy, "en");
    }
}
