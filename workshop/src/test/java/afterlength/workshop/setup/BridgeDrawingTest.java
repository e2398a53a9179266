package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Length;
import afterlength.workshop.paper.Circle;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.SvgPen;
import afterlength.workshop.paper.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BridgeDrawingTest {
    static Stream<Drawing> drawings() {
        return Stream.of(Bench.violin(), Bench.cello(), Bench.fiveStrings(), Bench.sixStrings())
                .flatMap(shape -> Stream.of(
                        BridgeDrawing.forScreen(shape),
                        BridgeDrawing.forPaper(shape, null),
                        BridgeDrawing.forPaper(shape, Length.ofMm(41))));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void noTwoLabelsTouch(Drawing drawing) {
        List<Words> words = all(drawing, Words.class);
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                assertThat(words.get(i).bounds().overlaps(words.get(j).bounds()))
                        .as("'%s' and '%s'", words.get(i).words(), words.get(j).words())
                        .isFalse();
            }
        }
    }

    @Test
    void stringsAreDiscsOfTheirTrueDiameterStandingInTheWood() {
        BridgeShape violin = Bench.violin();
        List<Circle> discs = all(BridgeDrawing.forPaper(violin, null), Circle.class);
        assertThat(discs).extracting(Circle::radius_mm).containsExactly(0.4, 0.36, 0.33, 0.13);
        for (int i = 0; i < discs.size(); i++) {
            double underside_mm = discs.get(i).bounds().bottom_mm();
            double diameter_mm = 2 * discs.get(i).radius_mm();
            assertThat(violin.strings().get(i).woodHeight().mm() - underside_mm)
                    .isCloseTo(diameter_mm / 3, within(1e-9));
        }
    }

    @Test
    void bassLiesLeft() {
        Drawing drawing = BridgeDrawing.forScreen(Bench.violin());
        assertThat(words(drawing, "G").at().x_mm()).isCloseTo(-16.75, within(1e-9));
        assertThat(words(drawing, "E").at().x_mm()).isCloseTo(16.75, within(1e-9));
    }

    @Test
    void theDescriptionTellsTheFigures() {
        assertThat(BridgeDrawing.forScreen(Bench.violin()).description())
                .startsWith("Height over the belly on the centre line 33.1 mm ± 0.3 mm;")
                .endsWith("wood under the strings from bass to treble: G 31.0 mm, D 33.2 mm, A 32.3 mm, E 28.3 mm");
    }

    @Test
    void specimensToLookAt() throws IOException {
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
            String svg = SvgPen.forScreen(BridgeDrawing.forScreen(entry.getValue()));
            Path file = Path.of("target", "bridge-" + entry.getKey() + ".svg");
            Files.writeString(file, svg);
            assertThat(file).isNotEmptyFile();
        }
    }

    private static Words words(Drawing drawing, String words) {
        return all(drawing, Words.class).stream()
                .filter(shape -> shape.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static <T> List<T> all(Drawing drawing, Class<T> kind) {
        return drawing.shapes().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
