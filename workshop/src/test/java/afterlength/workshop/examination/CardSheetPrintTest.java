package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.sight.card.Card;
import afterlength.sight.card.Rectangle;
import afterlength.workshop.paper.MeasuredLine;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.PdfRuler;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The card measured in the PDF's own path operators. */
class CardSheetPrintTest {
    /** Demanded of squares and rules; the file's own numbers are some ten thousandths of a millimetre apart. */
    private static final double TOLERANCE_MM = 0.05;

    private static PdfRuler sheet(Card card, PaperSize size) throws IOException {
        byte[] pdf = CardSheet.pdf(card, size, 7, "Afterlength test");
        Files.write(Path.of("target", "card-" + card + "-" + size + ".pdf"), pdf);
        return PdfRuler.of(pdf);
    }

    @ParameterizedTest
    @CsvSource({"BODY, A4", "BODY_LETTER, LETTER", "POCKET, A4", "POCKET, LETTER"})
    void everySquareAndPatchHasItsSizeAndPlace(Card card, PaperSize size) throws IOException {
        try (PdfRuler ruler = sheet(card, size)) {
            List<Rectangle2D> areas = ruler.areas(1);
            List<Rectangle> squares = card.squares();
            assertThat(areas).hasSize(squares.size() + card.patches().size());
            double left_mm = areas.get(0).getX() - squares.get(0).left_mm();
            double top_mm = areas.get(0).getMaxY() + squares.get(0).top_mm();
            for (int n = 0; n < squares.size(); n++) {
                Rectangle drawn = squares.get(n);
                Rectangle2D area = areas.get(n);
                assertThat(area.getX() - left_mm).isCloseTo(drawn.left_mm(), within(TOLERANCE_MM));
                assertThat(top_mm - area.getMaxY()).isCloseTo(drawn.top_mm(), within(TOLERANCE_MM));
                assertThat(area.getWidth()).isCloseTo(drawn.width_mm(), within(TOLERANCE_MM));
                assertThat(area.getHeight()).isCloseTo(drawn.height_mm(), within(TOLERANCE_MM));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"BODY, A4", "BODY_LETTER, LETTER", "POCKET, A4", "POCKET, LETTER"})
    void bothCheckLinesAreAHundredMillimetresAndTheRuleRunsTrue(Card card, PaperSize size) throws IOException {
        try (PdfRuler ruler = sheet(card, size)) {
            assertThat(ruler.levelLines(1, 100, TOLERANCE_MM)).hasSize(1);
            assertThat(ruler.uprightLines(1, 100, TOLERANCE_MM)).hasSize(1);
            List<MeasuredLine> tens = ruler.levelLines(1, 3.5, 0.01).stream()
                    .sorted(Comparator.comparingDouble(MeasuredLine::fromY_mm))
                    .toList();
            for (int n = 1; n < tens.size(); n++) {
                assertThat(tens.get(n).fromY_mm() - tens.get(0).fromY_mm()).isCloseTo(10 * n, within(TOLERANCE_MM));
            }
            assertThat(tens).hasSize(card.isBody() ? 25 : 9);
        }
    }

    @ParameterizedTest
    @CsvSource({"BODY, A4", "BODY_LETTER, LETTER", "POCKET, A4", "POCKET, LETTER"})
    void everythingLiesEightMillimetresInsideTheSheet(Card card, PaperSize size) throws IOException {
        try (PdfRuler ruler = sheet(card, size)) {
            assertThat(ruler.lines(1)).allSatisfy(line -> {
                assertThat(Math.min(line.fromX_mm(), line.toX_mm())).isGreaterThan(8);
                assertThat(Math.max(line.fromX_mm(), line.toX_mm())).isLessThan(size.width_mm() - 8);
                assertThat(Math.min(line.fromY_mm(), line.toY_mm())).isGreaterThan(8);
                assertThat(Math.max(line.fromY_mm(), line.toY_mm())).isLessThan(size.height_mm() - 8);
            });
            assertThat(ruler.text()).contains("card 7").contains("Print at 100 %, on matt paper");
        }
    }
}
