package afterlength.workshop.glue;

import afterlength.craft.glue.Spread;
import afterlength.craft.glue.WorkingWindow;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import afterlength.workshop.paper.SvgPen;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** The sheet for the wall beside the pot: cautions first, the batch, times, and seconds on spruce and maple. */
record GlueSheet(
        Settings settings,
        List<Pot> open,
        String drawing,
        WorkingWindow.Known window,
        List<WindowLine> spruce,
        List<WindowLine> maple,
        Instant now) {

    static GlueSheet of(Settings settings, List<Pot> open, Spread spruce, Spread maple, Instant now) {
        WorkingWindow.Known window = (WorkingWindow.Known) WorkingWindow.of(spruce);
        return new GlueSheet(
                settings,
                open,
                SvgPen.forPaper(WindowChart.of(spruce, window)),
                window,
                WindowLine.of(spruce),
                WindowLine.of(maple),
                now);
    }

    byte[] pdf() {
        return PaperPdf.of(new PaperDocument(
                "Hot glue at the bench",
                "en",
                settings.letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(settings.shopName(), Days.words(Days.day(now))),
                Templates.text(this),
                Map.of()));
    }
}
