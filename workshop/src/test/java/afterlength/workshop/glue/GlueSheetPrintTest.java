package afterlength.workshop.glue;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PdfRuler;
import java.io.IOException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class GlueSheetPrintTest {
    /** The cautions stand on the paper, before everything else; every window has its band; every caveat is printed. */
    @Test
    void theSheetForTheWall() throws IOException {
        var spruce = WindowForm.read(WindowForm.usual()).orElseThrow();
        Map<String, String> onMaple = new LinkedHashMap<>(WindowForm.usualFields());
        onMaple.put("wood", "maple");
        var maple = WindowForm.read(Typed.known(onMaple)).orElseThrow();
        GlueSheet sheet = GlueSheet.of(Settings.FRESH, List.of(), spruce, maple, Instant.parse("2026-11-04T13:15:00Z"));
        String words;
        try (PdfRuler ruler = PdfRuler.of(sheet.pdf())) {
            words = new PDFTextStripper().getText(ruler.document()).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
        assertThat(words)
                .contains(Cautions.HOT_GLUE.text(), Cautions.FIRST_OF_ALL)
                .contains("Aim at 60 °C; never above 65.6 °C.")
                .contains(WindowWords.caveats(sheet.window()));
        assertThat(words.indexOf(Cautions.HOT_GLUE.text())).isLessThan(words.indexOf("Aim at 60"));
        for (WindowLine line : sheet.maple()) {
            assertThat(words).contains(WindowWords.band(line.window().seconds()));
        }
    }
}
