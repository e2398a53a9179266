package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is sent, it is answered or refused; a fault of our own never shows. To run one case again, use its seed. */
class FuzzTest {
    /** More by hand: {@code -Dfuzz.cases=10000}. */
    private static final int CASES = Integer.getInteger("fuzz.cases", 2000);

    /** What is put in place of a piece of the document. */
    private static final List<String> PIECES = List.of(
            "",
            "0",
            "-1",
            "1e308",
            "-1e308",
            "1e999",
            "1e-320",
            "NaN",
            "12345678901234567890123",
            "0.5",
            "1000000",
            "null",
            "true",
            "\"\"",
            "\"text\"",
            "\"\\ud800\"",
            "\"\\u0000\"",
            "[]",
            "{}",
            "[1,2,3]",
            "[[0,0],[1,1]]",
            "{\"a\":{\"b\":1}}",
            ",",
            ":",
            "}",
            "\"temperature_C\":1,");

    /** Every key that may be left out of the bridge's document. */
    private static final String FULL = """
            {
              "instrument": "Old violin", "foot_span_mm": 41, "board_radius_nut_mm": 40, "spacing": "gaps",
              "scoop_mm": { "bass": 0.8, "treble": 0.4 }, "waist_width_mm": 110, "edge_drop_mm": 13,
            """;

    /** Every example, and the ways of asking that no example shows. */
    static Stream<Arguments> documents() {
        return Stream.concat(Verb.all().stream().map(verb -> Arguments.of(verb.name(), verb.example())), otherWays());
    }

    private static Stream<Arguments> otherWays() {
        String violin = example("bridge");
        String template = "{ \"template_mm\": [[-20, 0], [0, 5], [20, 0]] }";
        return Stream.of(
                Arguments.of("bridge", violin.replace("{ \"radius_mm\": 42 }", template)),
                Arguments.of("bridge", violin.replace("{ \"radius_mm\": 42 }", "\"even play\"")),
                Arguments.of(
                        "bridge",
                        violin.replace("\"E\"", "\"E\", \"nut_y_mm\": 8, \"bridge_y_mm\": 17")
                                .replace("\"A\"", "\"A\", \"nut_y_mm\": 3, \"bridge_y_mm\": 6")
                                .replace("\"D\"", "\"D\", \"nut_y_mm\": -3, \"bridge_y_mm\": -5")
                                .replace("\"G\"", "\"G\", \"nut_y_mm\": -8, \"bridge_y_mm\": -16")),
                Arguments.of("gluing", example("gluing").replace("  \"plate_mm\": 2.5,\n", "")),
                Arguments.of("bridge", violin.replace("{\n", FULL)),
                Arguments.of("bowing", example("bowing").replace("{ \"radius_mm\": 42 }", template)),
                Arguments.of(
                        "bowing",
                        example("bowing")
                                .replace("\"square\"", "\"upright\"")
                                .replace("\"A\": 164", "\"G\": 292, \"E\": 82")
                                .replace("\"tension_N\": 75", "\"linear_density_g_m\": 0.38, \"frequency_Hz\": 659.3")),
                Arguments.of(
                        "strings",
                        example("strings")
                                .replace(
                                        "\"string_angle_deg\": 158",
                                        "\"break\": { \"after_length_mm\": 55, \"tail_height_mm\": 44, \"bridge_height_mm\": 55,"
                                                + " \"neck_slope_deg\": 8 }")));
    }

    private static String example(String verb) {
        return Verb.all().stream()
                .filter(known -> known.name().equals(verb))
                .findFirst()
                .orElseThrow()
                .example();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void neverAFaultOfOurOwn(String verb, String known) {
        assertThat(Typed.with(known, verb).exit()).as(known).isZero();
        for (long seed = 0; seed < CASES; seed++) {
            byte[] document = changed(known, new SplittableRandom(seed));
            Typed typed = Typed.with(document, verb);
            String shown = "seed " + seed + ": " + new String(document, StandardCharsets.UTF_8);
            assertThat(typed.err()).as(shown).isEmpty();
            assertThat(typed.exit()).as(shown).isIn(0, 2);
            assertThat(typed.json().path("problems").size() > 0).as(shown).isEqualTo(typed.exit() == 2);
            if (typed.exit() == 2) {
                assertThat(typed.json().size()).as(shown).isEqualTo(1);
                assertThat(typed.problems()).as(shown).isNotEmpty();
            }
        }
    }

    static byte[] changed(String example, SplittableRandom random) {
        String document = example;
        for (int change = random.nextInt(1, 4); change > 0; change--) {
            document = random.nextInt(4) == 0 ? scratched(document, random) : replaced(document, random);
        }
        byte[] bytes = document.getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(8) == 0 && bytes.length > 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** One value or key, from one mark to the next, gives way to a piece. */
    private static String replaced(String document, SplittableRandom random) {
        String[] parts = document.split("(?<=[:,\\[\\]{}])|(?=[:,\\[\\]{}])", -1);
        parts[random.nextInt(parts.length)] = PIECES.get(random.nextInt(PIECES.size()));
        return String.join("", parts);
    }

    /** A stretch is lost. */
    private static String scratched(String document, SplittableRandom random) {
        if (document.isEmpty()) {
            return document;
        }
        int from = random.nextInt(document.length());
        int to = Math.min(document.length(), from + random.nextInt(1, 12));
        return document.substring(0, from) + document.substring(to);
    }
}
