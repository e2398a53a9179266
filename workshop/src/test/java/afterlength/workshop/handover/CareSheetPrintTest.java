package afterlength.workshop.handover;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.examination.Moment;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CareSheetPrintTest {
    @TempDir
    Path folder;

    private HandedOverShop shop;

    @BeforeEach
    void open() {
        shop = new HandedOverShop(folder, "Ilse Tamm", GluedJoints.NONE);
    }

    private String words() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(shop.careSheets.pdf(shop.visit))) {
            return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @Test
    void beforeTheHandoverItIsADraftWithTheUsualAdvice() throws IOException {
        assertThat(words())
                .contains("Draft: the instrument is still in the workshop.", "Change strings one at a time.")
                .contains("let all strings down together");
    }

    @Test
    void afterwardsItHoldsTheAdviceOfThisInstrumentAndWhatItMeasuredGoingHome() throws IOException {
        shop.measure(Moment.BEFORE, 27.0, null, shop.clock.instant());
        shop.measure(Moment.AFTER, 29.8, null, shop.clock.instant());
        shop.handOver("Loosen nothing.\n\nLook at the seam.", "The worn edge.");
        assertThat(words())
                .contains("Next check 4 November 2027.", "– Loosen nothing. – Look at the seam.")
                .contains("The worn edge.", "projection 29.8 ± 0.2 mm 20 °C, 45 % RH")
                .doesNotContain("27.0 ± 0.2", "Draft");
    }

    @Test
    void withoutAdviceItSaysSo() throws IOException {
        shop.handOver("", "");
        assertThat(words()).contains("No advice was written down; ask the workshop.");
    }
}
