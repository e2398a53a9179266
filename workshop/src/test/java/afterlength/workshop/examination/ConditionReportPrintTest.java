package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PdfRuler;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConditionReportPrintTest {
    @TempDir
    Path root;

    private ExaminedShop shop;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
    }

    private PdfRuler report(String name) throws Exception {
        byte[] pdf = shop.reports.pdf(shop.visit, shop.settings.get());
        Files.write(Path.of("target", "condition-report-" + name + ".pdf"), pdf);
        return PdfRuler.of(pdf);
    }

    @Test
    void aReportOfNothingIsStillAPaper() throws Exception {
        try (PdfRuler paper = report("empty")) {
            assertThat(paper.text())
                    .contains("Condition report", "Viola, about 1905, visit 2026-001", "Ida Beispiel")
                    .contains("No finding is written down.", "Nothing was measured.")
                    .contains("for the workshop, place and date", "page 1 of 1");
            assertThat(paper.width_mm(1)).isCloseTo(210, within(0.05));
        }
    }

    @Test
    void everythingThatWasSeenStandsOnThePaper() throws Exception {
        Photograph detail = shop.take(TestPictures.jpeg(600, 400), Moment.BEFORE, "detail");
        shop.take(TestPictures.jpeg(400, 600), Moment.BEFORE, "front & back");
        shop.take(TestPictures.jpeg(400, 610), Moment.AFTER, "after all");
        shop.findings.add(shop.finding("own part", "own kind", "5 < 6 & “so”"), List.of());
        shop.findings.add(shop.finding("top", "wing crack", "along the grain"), List.of(detail.id()));
        shop.sittings.add(new Sitting(
                0,
                1,
                null,
                false,
                "daylight\nraking light",
                "",
                20.0,
                45.0,
                ExaminedShop.NOW,
                "M. Muster",
                ExaminedShop.NOW));
        shop.measures.add(shop.measure(Moment.BEFORE, Quantity.PROJECTION, 29.8, 0.2, 45));
        try (PdfRuler paper = report("full")) {
            String text = paper.text().replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("Two findings, two hinder playing.", "5 < 6 & “so”", "bass side · 42.0 ± 0.5 mm · old")
                    .contains("daylight, raking light", "wood 8.5 ± 0.5 %", "projection 29.8 ± 0.2 mm steel rule")
                    .contains("detail, before work", "front & back, before work", "Seen Taken to mean")
                    .doesNotContain("after all");
            assertThat(text.indexOf("top Seen"))
                    .as("parts in the order of the vocabulary")
                    .isLessThan(text.indexOf("own part Seen"));
        }
    }

    @Test
    void whatWasWithdrawnIsNotOnThePaper() throws Exception {
        long id = shop.findings.add(shop.finding("top", "wing crack", "along the grain"), List.of());
        shop.findings.withdraw(id, ExaminedShop.NOW);
        try (PdfRuler paper = report("withdrawn")) {
            assertThat(paper.text()).doesNotContain("along the grain");
        }
    }

    @Test
    void theShopsPaperIsUsed() throws Exception {
        Settings fresh = shop.settings.get();
        shop.settings.put(new Settings(
                "Bench & Co",
                "1 Lane\nTown",
                fresh.hands(),
                fresh.currency(),
                fresh.perHour(),
                0,
                true,
                java.time.LocalTime.of(17, 30),
                false));
        try (PdfRuler paper = report("letter")) {
            assertThat(paper.width_mm(1)).isCloseTo(215.9, within(0.05));
            assertThat(paper.text()).contains("Bench & Co, 1 Lane, Town.");
        }
    }
}
