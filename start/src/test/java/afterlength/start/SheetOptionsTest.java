package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets written from the command line. */
class SheetOptionsTest {
    private static final String VIOLIN = Verb.all().get(0).example();
    private static final String RADIUS = "{ \"radius_mm\": 42 }";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"A4,595,842", "letter,612,792"})
    void theSheetIsWrittenAndTheAnswerStays(String paper, int width_pt, int height_pt) throws IOException {
        Path pdf = folder.resolve("bridge.pdf");
        Path svg = folder.resolve("bridge.svg");
        Typed typed = Typed.with(
                VIOLIN.replace("{\n", "{ \"instrument\": \"Old violin\", \"foot_span_mm\": 41,\n"),
                "bridge",
                "--pdf",
                pdf.toString(),
                "--paper",
                paper,
                "--svg",
                svg.toString());
        assertThat(typed.exit()).as(typed.out()).isZero();
        assertThat(typed.out()).isEqualTo(Typed.with(VIOLIN, "bridge").out());
        try (PDDocument sheet = Loader.loadPDF(Files.readAllBytes(pdf))) {
            assertThat(sheet.getPage(0).getMediaBox().getWidth()).isBetween(width_pt - 1f, width_pt + 1f);
            assertThat(sheet.getPage(0).getMediaBox().getHeight()).isBetween(height_pt - 1f, height_pt + 1f);
            assertThat(new PDFTextStripper().getText(sheet))
                    .contains(
                            "Old violin",
                            "3 March 2026",
                            "Afterlength " + Version.get(),
                            "Measure these rules before you cut");
        }
        assertThat(Files.readString(svg))
                .contains("<svg", "Old violin", "3 March 2026", "Measure these rules before you cut");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {RADIUS, "\"even play\"", "{ \"template_mm\": [[-22, 0], [-8, 6], [0, 7], [9, 5.8], [22, 0]] }"})
    void everyKindOfCrownCanBeDrawn(String crown) {
        Path pdf = folder.resolve("bridge.pdf");
        Typed typed = Typed.with(VIOLIN.replace(RADIUS, crown), "bridge", "--pdf", pdf.toString());
        assertThat(typed.exit()).as(typed.out()).isZero();
        assertThat(pdf).isNotEmptyFile();
    }

    @Test
    void aFileThatCannotBeWrittenIsRefusedAndNothingElseIsSaid() {
        String pdf = folder.resolve("not there/bridge.pdf").toString();
        Typed typed = Typed.with(VIOLIN, "bridge", "--pdf", pdf, "--svg", folder.toString());
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).isEmpty();
        assertThat(typed.json().propertyNames()).containsExactly("problems");
        assertThat(typed.problems())
                .containsExactly(
                        ": The file \"" + pdf
                                + "\" cannot be written. Name a file in a folder that is there and may be written to.",
                        ": The file \"" + folder
                                + "\" cannot be written. Name a file in a folder that is there and may be written to.");
    }

    @Test
    void aRefusedDocumentWritesNoSheet() {
        Path pdf = folder.resolve("bridge.pdf");
        assertThat(Typed.with("{}", "bridge", "--pdf", pdf.toString()).exit()).isEqualTo(2);
        assertThat(pdf).doesNotExist();
    }

    @Test
    void everythingWrongWithTheOptionsIsSaidAtOnce() {
        Typed typed = Typed.with(VIOLIN, "bridge", "--paper", "A3", "--colour", "--pdf");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.problems())
                .containsExactly(
                        ": The paper is \"A3\"; allowed are A4 and Letter. Name one of them.",
                        ": bridge has no option \"--colour\". Its options are --pdf FILE, --svg FILE, --paper A4 or Letter,"
                                + " and --help.",
                        ": The option --pdf wants a value behind it.");
        assertThat(Typed.with("{}", "bowing", "--pdf", "x.pdf").problems())
                .contains(": bowing has no option \"--pdf\". The only option is --help; leave it out.");
    }

    @Test
    void aBridgeLargerThanPaperIsNotMadeSmaller() {
        String giant = VIOLIN.replace("\"projection_mm\": 27", "\"projection_mm\": 245");
        String pdf = folder.resolve("bridge.pdf").toString();
        assertThat(Typed.with(giant, "bridge").exit()).isZero();
        assertThat(Typed.with(giant, "bridge", "--pdf", pdf).problems())
                .containsExactly(
                        ": The drawing has no room on a sheet of A4 at 1 : 1, and nothing is made smaller. Leave out"
                                + " --pdf and take --svg.");
        assertThat(Typed.with(giant, "bridge", "--svg", pdf).exit()).isZero();
    }

    @Test
    void theHelpOfAVerbThatDrawsNamesItsOptions() {
        assertThat(Typed.with("", "bridge", "--help").out())
                .contains("--pdf FILE", "--svg FILE", "--paper A4 or Letter");
        assertThat(Typed.with("", "moisture", "--help").out()).doesNotContain("--pdf");
    }

    /** Any document that is answered can be drawn, or is too large for paper; never a fault of our own. */
    @Test
    void whateverIsAnsweredCanBeDrawn() {
        String svg = folder.resolve("bridge.svg").toString();
        String pdf = folder.resolve("bridge.pdf").toString();
        int drawn = 0;
        for (long seed = 1; seed <= 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Typed typed = Typed.with(
                    stretched(random).getBytes(StandardCharsets.UTF_8), "bridge", "--svg", svg, "--pdf", pdf);
            assertThat(typed.err()).as("seed " + seed).isEmpty();
            assertThat(typed.exit()).as("seed " + seed).isIn(0, 2);
            drawn += typed.exit() == 0 ? 1 : 0;
        }
        assertThat(drawn).isGreaterThan(30);
    }

    /** The violin with its numbers stretched, each by a way of its own. */
    private static String stretched(SplittableRandom random) {
        StringBuilder document = new StringBuilder();
        double most = random.nextDouble(0.02, 1.5);
        for (String piece : VIOLIN.split("(?<=[ ,])(?=[0-9])|(?<=[0-9])(?=[ ,\n}])", -1)) {
            boolean number = piece.matches("[0-9.]+");
            document.append(
                    number
                            ? Double.toString(Double.parseDouble(piece) * random.nextDouble(1 / (1 + most), 1 + most))
                            : piece);
        }
        return document.toString();
    }
}
