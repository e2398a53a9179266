package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SheetPrintTest {
    /** What a good printer keeps; the file itself is a hundred times nearer. */
    private static final double TOLERANCE_MM = 0.1;

    private static final SheetHead HEAD = new SheetHead(
            "Template for a trial",
            "Viola, no label, back in one piece",
            "3 March 2026",
            List.of(
                    new Entry("string length", "370.0 mm"),
                    new Entry("projection", "32.0 ± 0.2 mm"),
                    new Entry("pitch", "a′ 440 Hz, B♭ 466.2 Hz"),
                    new Entry("board radius", "42 mm")),
            "Afterlength 0.1.0",
            "en");

    private static Drawing square(double side_mm) {
        List<Point> corners =
                List.of(new Point(0, 0), new Point(side_mm, 0), new Point(side_mm, side_mm), new Point(0, side_mm));
        return new Sketch()
                .area(corners, Stroke.of(Ink.INK, 0.25), Ink.BAND)
                .putAll(Hatching.of(corners, 2, 45, Stroke.of(Ink.FAINT, 0.1)))
                .disc(new Point(20, 20), 5, Stroke.of(Ink.ACCENT, 0.3), Ink.PAPER)
                .words("Überprüft ♭ ± office", new Point(20, 30), 4, Anchor.MIDDLE, Face.SERIF, Ink.INK)
                .turnedWords("upright → ♯", new Point(30, 10), 3, Anchor.START, 90, Face.SANS, Ink.ACCENT)
                .drawing("Square", "A square of " + side_mm + " mm");
    }

    @ParameterizedTest
    @EnumSource
    void bothRulesMeasureAHundredMillimetres(PaperSize size) throws Exception {
        byte[] pdf = SheetPdf.of(size, HEAD, List.of(square(60)));
        Files.write(Path.of("target", "sheet-" + size + ".pdf"), pdf);
        try (PdfRuler ruler = PdfRuler.of(pdf)) {
            assertThat(ruler.width_mm(1)).isCloseTo(size.width_mm(), within(0.01));
            assertThat(ruler.height_mm(1)).isCloseTo(size.height_mm(), within(0.01));
            assertThat(ruler.levelLines(1, 100, TOLERANCE_MM)).hasSize(1);
            assertThat(ruler.uprightLines(1, 100, TOLERANCE_MM)).hasSize(1);
            assertThat(ruler.levelLines(1, 60, TOLERANCE_MM)).hasSize(2);
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingLiesOutsideTheBoxThatEveryPrinterReaches(PaperSize size) {
        try (PdfRuler ruler = PdfRuler.of(SheetPdf.of(size, HEAD, List.of(square(60))))) {
            assertThat(ruler.lines(1)).allSatisfy(line -> {
                assertThat(Math.min(line.fromX_mm(), line.toX_mm())).isGreaterThan(9.99);
                assertThat(Math.max(line.fromX_mm(), line.toX_mm())).isLessThan(size.width_mm() - 9.99);
                assertThat(Math.min(line.fromY_mm(), line.toY_mm())).isGreaterThan(9.99);
            });
        }
    }

    @Test
    void ticksStandTenMillimetresApart() {
        try (PdfRuler ruler = PdfRuler.of(SheetPdf.of(PaperSize.A4, HEAD, List.of(square(60))))) {
            List<Double> ticks = ruler.uprightLines(1, 1.8, 0.01).stream()
                    .map(MeasuredLine::fromX_mm)
                    .toList();
            assertThat(ticks).hasSize(8);
            assertThat(ticks.get(7) - ticks.get(0)).isCloseTo(80, within(0.01));
        }
    }

    @Test
    void wordsCanBeReadBackWithAllTheirSigns() {
        try (PdfRuler ruler = PdfRuler.of(SheetPdf.of(PaperSize.A4, HEAD, List.of(square(60))))) {
            assertThat(ruler.text())
                    .contains("Überprüft ♭ ± office")
                    .contains(CheckRules.CAUTION)
                    .contains("Viola, no label, back in one piece")
                    .contains("B♭ 466.2 Hz")
                    .contains("Afterlength 0.1.0");
        }
    }

    @Test
    void everyFontTravelsWithTheFile() {
        try (PdfRuler ruler = PdfRuler.of(SheetPdf.of(PaperSize.A4, HEAD, List.of(square(60))))) {
            assertThat(ruler.fonts()).isNotEmpty().allMatch(PDFont::isEmbedded);
        }
    }

    @Test
    void theFileSaysWhatItIsAndAsksNotToBeScaled() {
        try (PdfRuler ruler = PdfRuler.of(SheetPdf.of(PaperSize.LETTER, HEAD, List.of(square(60))))) {
            assertThat(ruler.document().getDocumentInformation().getTitle())
                    .isEqualTo("Template for a trial · Viola, no label, back in one piece");
            var catalog = ruler.document().getDocumentCatalog();
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getViewerPreferences().getPrintScaling()).isEqualTo("None");
        }
    }

    @Test
    void pagesAreCounted() {
        byte[] pdf = SheetPdf.of(PaperSize.A4, HEAD, List.of(square(40), square(50), square(60)));
        try (PdfRuler ruler = PdfRuler.of(pdf)) {
            assertThat(ruler.pages()).isEqualTo(3);
            assertThat(ruler.text(2)).contains("page 2 of 3").contains("3 March 2026");
        }
    }

    @Test
    void aDrawingThatDoesNotFitIsRefusedNotScaled() {
        assertThatThrownBy(() -> SheetPdf.of(PaperSize.A4, HEAD, List.of(square(180))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the drawing 'Square' is 180.0 × 180.0 mm; a sheet has room for 176.0 × 207.8 mm at 1:1. "
                        + "It is not made smaller; draw a part of it on each sheet");
    }

    @Test
    void aLostSignIsSeen() {
        Drawing drawing = new Sketch()
                .words("a \uD83C\uDFBB b", new Point(0, 0), 4, Anchor.START, Face.SANS, Ink.INK)
                .drawing("Lost", "A picture sign that no face here can write");
        try (PdfRuler ruler = PdfRuler.of(SheetPdf.of(PaperSize.A4, HEAD, List.of(drawing)))) {
            assertThat(ruler.text()).contains("a \uFFFD b").doesNotContain("#");
        }
    }
}
