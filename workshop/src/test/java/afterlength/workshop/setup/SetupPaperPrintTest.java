package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.units.Length;
import afterlength.workshop.paper.CheckRules;
import afterlength.workshop.paper.MeasuredLine;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.PdfRuler;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The papers of the set-up, measured on the page itself. */
class SetupPaperPrintTest {
    /** Half the breadth of a scribed line. */
    private static final double CLOSE_mm = 0.05;

    private static final CardFacts NOTHING = new CardFacts("", "", "", "", "");

    static Stream<Arguments> bridges() {
        return Stream.of(PaperSize.values())
                .flatMap(size -> Stream.of(
                        Arguments.of("violin", Bench.violinWithBody(), size),
                        Arguments.of("own-template", Bench.violinWith(Bench.ownTemplate()), size),
                        Arguments.of("even-play", Bench.violinWith(new EvenPlayCrown()), size),
                        Arguments.of("three", Bench.threeStrings(), size),
                        Arguments.of("five", Bench.fiveStrings(), size),
                        Arguments.of("six", Bench.sixStrings(), size),
                        Arguments.of("cello", Bench.cello(), size)));
    }

    private static BridgePaper paper(PaperSize size, boolean invented) {
        return new BridgePaper(
                "Violin, one-piece back", "3 March 2026", "Afterlength 0.1.0", size, invented, Length.ofMm(41));
    }

    @ParameterizedTest(name = "{0} on {2}")
    @MethodSource("bridges")
    void theBridgeSheetCarriesTheCrown(String name, BridgeShape shape, PaperSize size) throws IOException {
        byte[] pdf = kept("bridge-" + name, size, BridgeSheet.pdf(shape, paper(size, false)));
        try (PdfRuler ruler = PdfRuler.of(pdf)) {
            trueToSize(ruler, size);
            assertThat(timesDrawn(ruler, overBelly(shape, shape.crownPoints(121))))
                    .isEqualTo(1);
        }
    }

    @ParameterizedTest(name = "{0} on {2}")
    @MethodSource("bridges")
    void theTemplatesAreTheCrownTwiceAndTheBoard(String name, BridgeShape shape, PaperSize size) throws IOException {
        byte[] pdf = kept("crown-" + name, size, CrownSheet.pdf(shape, paper(size, false)));
        try (PdfRuler ruler = PdfRuler.of(pdf)) {
            trueToSize(ruler, size);
            assertThat(timesDrawn(ruler, overBelly(shape, shape.crownPoints(121))))
                    .isEqualTo(2);
            double half_mm = new BridgeOutline(shape).boardHalfWidth_mm();
            assertThat(timesDrawn(ruler, overBelly(shape, shape.boardArcAtEnd(half_mm, 121))))
                    .isEqualTo(1);
        }
    }

    @ParameterizedTest(name = "{0} on {2}")
    @MethodSource("bridges")
    void theCardFitsUnderItsHead(String name, BridgeShape shape, PaperSize size) throws IOException {
        byte[] pdf = kept("card-" + name, size, SetupCardSheet.pdf(shape, paper(size, false), NOTHING));
        try (PdfRuler ruler = PdfRuler.of(pdf)) {
            trueToSize(ruler, size);
            assertThat(ruler.pages()).isEqualTo(1);
            assertThat(ruler.levelLines(1, 132, 0.01)).as("edges to cut").hasSize(2);
        }
    }

    private static void trueToSize(PdfRuler ruler, PaperSize size) {
        for (int page = 1; page <= ruler.pages(); page++) {
            assertThat(ruler.width_mm(page)).isCloseTo(size.width_mm(), within(0.01));
            assertThat(ruler.height_mm(page)).isCloseTo(size.height_mm(), within(0.01));
            assertThat(ruler.levelLines(page, 100, 0.1)).as("level rule").hasSize(1);
            assertThat(ruler.uprightLines(page, 100, 0.1)).as("upright rule").hasSize(1);
        }
        assertThat(ruler.text())
                .contains(CheckRules.CAUTION, "Violin, one-piece back", "3 March 2026", "Afterlength 0.1.0");
        assertThat(ruler.fonts()).isNotEmpty().allMatch(font -> font.isEmbedded());
    }

    /** How often a curve is drawn on any page: every one of its pieces must be found, moved by the same way. */
    private static long timesDrawn(PdfRuler ruler, List<CrossPoint> curve) {
        long times = 0;
        for (int page = 1; page <= ruler.pages(); page++) {
            List<MeasuredLine> lines = ruler.lines(page);
            times += lines.stream().filter(first -> begins(lines, curve, first)).count();
        }
        return times;
    }

    private static boolean begins(List<MeasuredLine> lines, List<CrossPoint> curve, MeasuredLine first) {
        double right_mm = first.fromX_mm() - curve.get(0).y_mm();
        double up_mm = first.fromY_mm() - curve.get(0).z_mm();
        boolean firstPiece = near(first.toX_mm(), curve.get(1).y_mm() + right_mm)
                && near(first.toY_mm(), curve.get(1).z_mm() + up_mm);
        return firstPiece && lies(lines, curve, right_mm, up_mm);
    }

    private static boolean lies(List<MeasuredLine> lines, List<CrossPoint> curve, double right_mm, double up_mm) {
        for (int i = 1; i < curve.size(); i++) {
            CrossPoint from = curve.get(i - 1);
            CrossPoint to = curve.get(i);
            if (lines.stream()
                    .noneMatch(line -> near(line.fromX_mm(), from.y_mm() + right_mm)
                            && near(line.fromY_mm(), from.z_mm() + up_mm)
                            && near(line.toX_mm(), to.y_mm() + right_mm)
                            && near(line.toY_mm(), to.z_mm() + up_mm))) {
                return false;
            }
        }
        return true;
    }

    private static boolean near(double one_mm, double other_mm) {
        return Math.abs(one_mm - other_mm) <= CLOSE_mm;
    }

    private static List<CrossPoint> overBelly(BridgeShape shape, List<CrossPoint> points) {
        return points.stream()
                .map(point -> new CrossPoint(
                        point.y_mm(), point.z_mm() + shape.inputs().projection_mm()))
                .toList();
    }

    private static byte[] kept(String name, PaperSize size, byte[] pdf) throws IOException {
        Files.write(Path.of("target", name + "-" + size.words() + ".pdf"), pdf);
        return pdf;
    }

    @Test
    void theBridgeSheetSaysWhatTheBowMeets() {
        try (PdfRuler ruler = PdfRuler.of(BridgeSheet.pdf(Bench.violinWithBody(), paper(PaperSize.A4, false)))) {
            assertThat(ruler.text())
                    .contains("The bow on one string alone", "room, octave", "no room from")
                    .contains(
                            "The bow 20.5 mm from the bridge: lightly on the open strings, and at the octave pressed with 1.0 N.")
                    .contains("scoop of the board 0.75 / 0.25 mm", "waist, edge below belly 112.0, 11.5 mm");
        }
    }

    @Test
    void withoutTensionsNothingIsPressedAndWhatIsMissingIsSaid() {
        try (PdfRuler ruler = PdfRuler.of(BridgeSheet.pdf(Bench.violin(), paper(PaperSize.A4, false)))) {
            assertThat(ruler.text().replaceAll("\\s+", " "))
                    .contains("at the octave lightly too, because a tension is not known.")
                    .contains("The scoop of the board was not measured")
                    .contains("The waist was not measured");
        }
    }

    @Test
    void theDemonstrationSaysThatAllIsInvented() {
        BridgePaper demonstration = paper(PaperSize.A4, true);
        BridgeShape violin = Bench.violin();
        Map<String, byte[]> sheets = Map.of(
                "bridge", BridgeSheet.pdf(violin, demonstration),
                "crown", CrownSheet.pdf(violin, demonstration),
                "card", SetupCardSheet.pdf(violin, demonstration, NOTHING));
        sheets.forEach((name, pdf) -> {
            try (PdfRuler ruler = PdfRuler.of(pdf)) {
                assertThat(ruler.text(1)).as(name).contains("invented");
            }
        });
        assertThat(BridgeSheet.svg(violin, demonstration)).contains("invented");
    }

    @Test
    void theCardShowsWhatWasMeasured() {
        CardFacts facts = new CardFacts(
                "55.0 ± 0.5 mm", "behind 2.5 ± 0.3 mm", "20.5 °C, 48 % RH", "33.2 ± 0.2 mm", "5.5 and 3.4 ± 0.2 mm");
        BridgePaper paper = paper(PaperSize.LETTER, false);
        try (PdfRuler ruler = PdfRuler.of(SetupCardSheet.pdf(Bench.violin(), paper, facts))) {
            assertThat(ruler.text())
                    .contains(
                            "55.0 ± 0.5 mm",
                            "behind 2.5 ± 0.3 mm",
                            "20.5 °C, 48 % RH",
                            "33.2 ± 0.2 mm",
                            "5.5 and 3.4 ± 0.2 mm")
                    .contains("33.5 mm, centre to centre", "Set up as of 3 March 2026");
        }
    }

    @Test
    void theDrawingForACutterIsTrueToSizeAndCarriesItsRules() {
        String svg = BridgeSheet.svg(Bench.violinWithBody(), paper(PaperSize.A4, false));
        assertThat(svg).contains(CheckRules.CAUTION, "Violin, one-piece back", "3 March 2026", "Afterlength 0.1.0");
        // the width in millimetres is the width of the view, so one user unit is one millimetre
        assertThat(svg).containsPattern("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\" viewBox=\"0 0 \\1 \\2\"");
    }
}
