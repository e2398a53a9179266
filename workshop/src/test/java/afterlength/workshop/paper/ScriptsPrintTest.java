package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of people who do not write in Latin letters: printed, in the right order, and never as silent boxes. */
class ScriptsPrintTest {
    private static final String HEBREW = "שלום";
    private static final String ARABIC = "سلام";

    private static PdfRuler paper(String name) {
        return PdfRuler.of(pdf(name));
    }

    private static byte[] pdf(String name) {
        String body = "<p>For " + name + ".</p>";
        return PaperPdf.of(new PaperDocument(
                "Receipt",
                "en",
                PaperSize.A4,
                RunningWords.english("Violin of " + name, "4 November 2026"),
                body,
                Map.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"王小明", "山田太郎", "ひらがな", "カタカナ", "Ольга Петрова", "Ελένη", "Nguyễn Thị Ánh", "Łukasz Żółć"})
    void aNameIsPrintedAndCanBeReadBack(String name) {
        try (PdfRuler paper = paper(name)) {
            assertThat(paper.text()).contains("For " + name + ".").doesNotContain("\uFFFD", "cannot write");
            assertThat(paper.fonts()).allMatch(PDFont::isEmbedded);
        }
    }

    @Test
    void aHebrewNameIsDrawnFromTheRight() throws IOException {
        assertThat(RightToLeft.asSeen(HEBREW))
                .isEqualTo(new StringBuilder(HEBREW).reverse().toString());
        Files.write(Path.of("target", "scripts-hebrew.pdf"), pdf(HEBREW));
        try (PdfRuler paper = paper(HEBREW)) {
            assertThat(paper.text()).contains(HEBREW).doesNotContain("\uFFFD");
        }
    }

    /** The four letters of "salam" as they stand in a word: initial, medial with alef joined as lam-alef, isolated meem at its end. */
    @Test
    void anArabicNameIsJoinedAndDrawnFromTheRight() {
        assertThat(ArabicForms.joined(ARABIC)).isEqualTo("\uFEB3\uFEFC\uFEE1");
        assertThat(ArabicForms.parted("\uFEB3\uFEFC\uFEE1")).isEqualTo(ARABIC);
        assertThat(RightToLeft.asSeen(ARABIC)).isEqualTo("\uFEE1\uFEFC\uFEB3");
        try (PdfRuler paper = paper(ARABIC)) {
            assertThat(paper.text()).contains(ARABIC).doesNotContain("\uFFFD");
        }
    }

    /** By the rules of joining: beh joins both ways, reh only back, so three of one and one of the other show every place. */
    @Test
    void everyPlaceOfALetterHasItsForm() {
        assertThat(ArabicForms.joined("ب")).isEqualTo("\uFE8F");
        assertThat(ArabicForms.joined("بب")).isEqualTo("\uFE91\uFE90");
        assertThat(ArabicForms.joined("ببب")).isEqualTo("\uFE91\uFE92\uFE90");
        assertThat(ArabicForms.joined("برب")).isEqualTo("\uFE91\uFEAE\uFE8F");
        assertThat(ArabicForms.joined("بَب")).isEqualTo("\uFE91\u064E\uFE90");
        assertThat(ArabicForms.joined("violin")).isEqualTo("violin");
    }

    @Test
    void numbersAndBracketsKeepTheirSense() {
        assertThat(RightToLeft.asSeen("א (1905)")).isEqualTo("(1905) א");
        assertThat(RightToLeft.asSeen("Violin (1905)")).isEqualTo("Violin (1905)");
    }

    @Test
    void aSignThatNoLetterCanWriteIsMarkedAndNamed() {
        try (PdfRuler paper = paper("अ 🎻")) {
            assertThat(paper.text().replaceAll("\\s+", " "))
                    .contains("For \uFFFD \uFFFD.")
                    .contains("The letters of this program cannot write every sign; where \uFFFD stands, in this order:"
                            + " U+0905 devanagari letter a; U+1F3BB violin.");
        }
    }

    /** Hangul is not among our letters; that is said, syllable by syllable. */
    @Test
    void aKoreanNameIsNamedByItsSigns() {
        try (PdfRuler paper = paper("김")) {
            assertThat(paper.text().replaceAll("\\s+", " ")).contains("U+AE40 hangul syllables ae40");
        }
    }

    /** Ink is compared with an empty name: silent boxes of no width would leave none. */
    @ParameterizedTest
    @ValueSource(strings = {"王小明", HEBREW, ARABIC})
    void aNameLeavesInkOnThePage(String name) throws IOException {
        assertThat(ink(name)).isGreaterThan(ink("") + 60);
    }

    private static long ink(String name) throws IOException {
        try (PdfRuler paper = paper(name)) {
            BufferedImage page = new PDFRenderer(paper.document()).renderImageWithDPI(0, 72);
            return java.util.stream.IntStream.range(0, page.getWidth() * page.getHeight())
                    .filter(at -> (page.getRGB(at % page.getWidth(), at / page.getWidth()) & 0xFF) < 128)
                    .count();
        }
    }

    @Test
    void aVeryLongNameStaysOnThePage() {
        String name = "Maximiliana-Theodora ".repeat(12).strip();
        try (PdfRuler paper = paper(name)) {
            assertThat(paper.text().replaceAll("\\s+", " ")).contains("For " + name + ".");
        }
        String unbroken = "Donau".repeat(60);
        try (PdfRuler paper = paper(unbroken)) {
            assertThat(paper.text().replaceAll("\\s+", "")).contains("For" + unbroken + ".");
        }
    }
}
