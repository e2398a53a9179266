package afterlength.workshop.handover;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.examination.Moment;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinalReportPrintTest {
    private static final Instant GLUED = Instant.parse("2026-11-02T09:40:00Z");

    @TempDir
    Path folder;

    private static String words(HandedOverShop shop) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(shop.reports.pdf(shop.visit))) {
            return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @Test
    void whatWasGluedStandsWithGlueAndAir() throws IOException {
        HandedOverShop shop = new HandedOverShop(
                folder,
                "Ilse Tamm",
                visit -> List.of(new GluedJoint(
                        GLUED,
                        "lower treble seam",
                        "pot 3, 192 g strength",
                        "20.5 °C, 46 % RH, from the logger",
                        "to stay clamped 12 h",
                        "",
                        "Ines")));
        assertThat(words(shop))
                .contains("When, by whom Joint Glue Air")
                .contains("2 Nov 2026, 09:40 Ines lower treble seam pot 3, 192 g strength to stay clamped 12 h")
                .contains("20.5 °C, 46 % RH, from the logger");
    }

    @Test
    void withoutGluingsTheirHeadingIsMissing() throws IOException {
        HandedOverShop shop = new HandedOverShop(folder, "Ilse Tamm", GluedJoints.NONE);
        assertThat(words(shop)).contains("No finding was written down.").doesNotContain("Glue Air");
    }

    @Test
    void aCorrectedMeasureCarriesItsMarkInThePair() throws IOException {
        HandedOverShop shop = new HandedOverShop(folder, "Ilse Tamm", GluedJoints.NONE);
        long first = shop.measure(Moment.BEFORE, 26.0, null, GLUED);
        shop.measure(Moment.BEFORE, 27.0, first, GLUED.plusSeconds(600));
        shop.measure(Moment.AFTER, 29.8, null, GLUED);
        assertThat(words(shop))
                .contains("projection 27.0 ± 0.2 mm c1 29.8 ± 0.2 mm 2.8 ± 0.3 mm more")
                .contains("c1 Corrected 2 Nov 2026, 09:50; written 2 Nov 2026, 09:40 it read: 26.0 ± 0.2 mm.");
    }
}
