package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Length;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.paper.CheckRules;
import afterlength.workshop.paper.MeasuredLine;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.PdfRuler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BridgePrintTest {
    private static byte[] pdf(BridgeShape shape, PaperSize size) {
        return BridgeSheet.pdf(
                shape,
                new BridgePaper(
                        "Violin, one-piece back, no label",
                        "3 March 2026",
                        "Afterlength 0.1.0",
                        size,
                        false,
                        Length.ofMm(41)));
    }

    @ParameterizedTest
    @EnumSource
    void bothRulesAndTheTemplateAreTrueToSize(PaperSize size) {
        BridgeShape violin = Bench.violin();
        try (PdfRuler ruler = PdfRuler.of(pdf(violin, size))) {
            assertThat(ruler.levelLines(1, 100, 0.1)).hasSize(1);
            assertThat(ruler.uprightLines(1, 100, 0.1)).hasSize(1);
            assertThat(ruler.levelLines(1, 41, 0.01)).as("foot span").hasSize(1);
            // One upright runs over the belly to each string, from half a small letter below it.
            List<MeasuredLine> strings = violin.strings().stream()
                    .map(string -> ruler.uprightLines(1, string.woodHeight().mm() + 1.3, 0.01))
                    .peek(lines -> assertThat(lines).hasSize(1))
                    .map(lines -> lines.get(0))
                    .sorted(Comparator.comparingDouble(MeasuredLine::fromX_mm))
                    .toList();
            assertThat(strings.get(3).fromX_mm() - strings.get(0).fromX_mm()).isCloseTo(33.5, within(0.01));
        }
    }

    @Test
    void theSheetSaysWhoseBridgeItIsAndFromWhatItWasDrawn() {
        try (PdfRuler ruler = PdfRuler.of(pdf(Bench.violin(), PaperSize.A4))) {
            assertThat(ruler.text())
                    .contains("Bridge, 33.1 mm on the centre line", "Violin, one-piece back, no label", "3 March 2026")
                    .contains("Afterlength 0.1.0", CheckRules.CAUTION, "page 1 of 1")
                    .contains("projection 27.0 mm", "5.50 / 3.50 mm", "radius 42.0 mm")
                    .contains("the post can fall");
        }
    }

    @Test
    void aCelloBridgeFitsAsWell() throws IOException {
        Map<String, BridgeShape> shapes = Map.of(
                "violin",
                Bench.violin(),
                "cello",
                Bench.cello(),
                "five",
                Bench.fiveStrings(),
                "six",
                Bench.sixStrings());
        for (Map.Entry<String, BridgeShape> entry : shapes.entrySet()) {
            byte[] pdf = pdf(entry.getValue(), PaperSize.LETTER);
            Files.write(Path.of("target", "bridge-" + entry.getKey() + ".pdf"), pdf);
            try (PdfRuler ruler = PdfRuler.of(pdf)) {
                assertThat(ruler.text()).contains(Figures.mm(entry.getValue().centreHeight()));
            }
        }
    }
}
