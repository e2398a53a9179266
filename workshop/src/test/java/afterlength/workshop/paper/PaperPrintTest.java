package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperPrintTest {
    private static PaperDocument paper(PaperSize size, String body) throws IOException {
        return new PaperDocument(
                "Report after restoration",
                "en",
                size,
                RunningWords.english("Violin, maker’s label ‘A. Muster’, one-piece back", "3 March 2026"),
                body,
                Map.of("top", picture(), "back", picture()));
    }

    private static byte[] picture() throws IOException {
        BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setPaint(new GradientPaint(0, 0, new Color(0xD9B48A), 600, 400, new Color(0x7A4A26)));
        graphics.fillRect(0, 0, 600, 400);
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", jpeg);
        return jpeg.toByteArray();
    }

    private static PdfRuler ruler(String body) throws IOException {
        return PdfRuler.of(PaperPdf.of(paper(PaperSize.A4, body)));
    }

    private static String specimen() throws IOException {
        try (var stream = Objects.requireNonNull(PaperPrintTest.class.getResourceAsStream("specimen.html"))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("<rules/>", SvgPen.forPaper(CheckRules.at(new Point(0, 0))));
        }
    }

    private static String longTable() {
        return IntStream.rangeClosed(1, 60)
                .mapToObj(row -> "<tr><td>row " + row + " begins<br/>and row " + row + " ends</td></tr>")
                .collect(Collectors.joining("", "<table><thead><tr><th>Steps</th></tr></thead>", "</table>"));
    }

    @ParameterizedTest
    @EnumSource
    void thePageHasTheSizeAskedForAndADrawingKeepsItsLengths(PaperSize size) throws IOException {
        byte[] pdf = PaperPdf.of(paper(size, specimen()));
        Files.write(Path.of("target", "paper-" + size + ".pdf"), pdf);
        try (PdfRuler ruler = PdfRuler.of(pdf)) {
            assertThat(ruler.width_mm(1)).isCloseTo(size.width_mm(), within(0.05));
            assertThat(ruler.height_mm(1)).isCloseTo(size.height_mm(), within(0.05));
            List<MeasuredLine> level = IntStream.rangeClosed(1, ruler.pages())
                    .boxed()
                    .flatMap(page -> ruler.levelLines(page, 100, 0.1).stream())
                    .toList();
            assertThat(level).isNotEmpty();
        }
    }

    @Test
    void wordsCanBeReadBackWithAllTheirSigns() throws IOException {
        try (PdfRuler ruler = ruler("<p>Überprüft ♭ ± office, u\u0308ber ♯ → ½</p>")) {
            assertThat(ruler.text()).contains("Überprüft ♭ ± office, über ♯ → ½");
        }
    }

    @Test
    void aLostSignIsSeenAndNeverANumberSign() throws IOException {
        try (PdfRuler ruler = ruler("<p>tune \uD83C\uDFBB it</p>")) {
            assertThat(ruler.text()).contains("tune \uFFFD it").doesNotContain("#");
        }
    }

    @Test
    void everyFontTravelsWithTheFile() throws IOException {
        try (PdfRuler ruler = ruler(specimen())) {
            assertThat(ruler.fonts()).isNotEmpty().allMatch(PDFont::isEmbedded);
        }
    }

    @Test
    void theFileSaysWhatItIsAndIsTagged() throws IOException {
        try (PdfRuler ruler = ruler(specimen())) {
            var catalog = ruler.document().getDocumentCatalog();
            assertThat(ruler.document().getDocumentInformation().getTitle())
                    .isEqualTo("Report after restoration · Violin, maker’s label ‘A. Muster’, one-piece back");
            assertThat(catalog.getLanguage()).isEqualTo("en");
            assertThat(catalog.getViewerPreferences().getPrintScaling()).isEqualTo("None");
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getStructureTreeRoot()).isNotNull();
            assertThat(catalog.getOutputIntents()).hasSize(1);
            String metadata = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertThat(metadata).contains("part>2</").contains("conformance>A</");
        }
    }

    @Test
    void aDrawingAndAPictureAreDescribedToWhoHasItReadAloud() throws IOException {
        String body = "<p><img src=\"top\" alt=\"The front\"/></p>" + SvgPen.forPaper(CheckRules.at(new Point(0, 0)));
        try (PdfRuler ruler = ruler(body)) {
            assertThat(StructureReader.alternatives(ruler.document()))
                    .contains("The front")
                    .anyMatch(words -> words.startsWith(CheckRules.CAUTION + ". A level and an upright rule"));
        }
    }

    @Test
    void everyPageIsCountedAtItsFoot() throws IOException {
        try (PdfRuler ruler = ruler(longTable())) {
            assertThat(ruler.pages()).isGreaterThan(1);
            for (int page = 1; page <= ruler.pages(); page++) {
                assertThat(ruler.text(page))
                        .contains("page " + page + " of " + ruler.pages())
                        .contains("one-piece back · 3 March 2026");
            }
        }
    }

    @Test
    void noRowOfATableIsBrokenOverTwoPagesAndTheHeadReturns() throws IOException {
        try (PdfRuler ruler = ruler(longTable())) {
            for (int page = 1; page <= ruler.pages(); page++) {
                String text = ruler.text(page);
                assertThat(text).contains("Steps");
                for (int row = 1; row <= 60; row++) {
                    boolean begins = text.contains("row " + row + " begins");
                    assertThat(text.contains("and row " + row + " ends")).isEqualTo(begins);
                }
            }
        }
    }

    /** A table that begins where only its head would fit used to break its first rows; so it begins at every height here. */
    @ParameterizedTest
    @ValueSource(strings = {"", "<h2>Head</h2><p class=\"reason\">words</p>", "<ul><li>one</li></ul>"})
    void noRowIsBrokenWhereverTheTableBegins(String before) throws IOException {
        String table = IntStream.rangeClosed(1, 14)
                .mapToObj(row ->
                        "<tr><td>row " + row + " begins<br/>" + "some words that go on for long ".repeat(3 + row % 6)
                                + "<br/>and row " + row + " ends</td><td>short<br/>two</td></tr>")
                .collect(Collectors.joining(
                        "",
                        "<table class=\"lines\"><thead><tr><th>Steps</th><th>B</th></tr></thead><tbody>",
                        "</tbody></table>"));
        for (int above = 24; above <= 33; above++) {
            try (PdfRuler ruler = ruler("<p>filler</p>".repeat(above) + before + table)) {
                for (int page = 1; page <= ruler.pages(); page++) {
                    String text = ruler.text(page);
                    for (int row = 1; row <= 14; row++) {
                        assertThat(text.contains("and row " + row + " ends"))
                                .as(above + " paragraphs above, row " + row)
                                .isEqualTo(text.contains("row " + row + " begins"));
                    }
                }
            }
        }
    }

    @Test
    void aBodyThatIsNotWellFormedIsRefusedWithThePlace() {
        assertThatThrownBy(() -> ruler("<p>one</p>\n<p>two<br></p>"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the body of 'Report after restoration' is not well-formed at line 2, column 13: "
                        + "The element type \"br\" must be terminated by the matching end-tag \"</br>\". "
                        + "Close every element (<br/>), quote every attribute and write &#160; for a hard space");
    }

    @Test
    void aPictureThatWasNotGivenIsRefused() {
        assertThatThrownBy(() -> ruler("<p><img src=\"file:///etc/hostname\" alt=\"\"/></p>"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "the paper 'Report after restoration' shows the picture 'file:///etc/hostname', which was not "
                                + "given with it; given were [back, top]. Pictures are given by name and never fetched");
    }

    @Test
    void nothingIsFetchedThroughAStyleOrADrawing() throws IOException {
        Path secret = Files.createTempFile("secret", ".svg");
        Files.writeString(
                secret,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"90mm\" height=\"9mm\" viewBox=\"0 0 90 9\">"
                        + "<line x1=\"0\" y1=\"1\" x2=\"77\" y2=\"1\" stroke=\"#000\"/></svg>");
        String uri = secret.toUri().toString();
        String body = "<style>@import url(" + uri + "); body { background-image: url(" + uri + ") }</style>"
                + "<object data=\"" + uri + "\">x</object>"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"90mm\" "
                + "height=\"9mm\" viewBox=\"0 0 90 9\"><image xlink:href=\"" + uri
                + "\" width=\"90\" height=\"9\"/></svg><p>after</p>";
        try (PdfRuler ruler = ruler(body)) {
            assertThat(ruler.text()).contains("after");
            assertThat(ruler.levelLines(1, 77, 0.2)).isEmpty();
        }
        Files.delete(secret);
    }
}
