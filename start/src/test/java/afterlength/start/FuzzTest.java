package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is sent, it is answered or refused; a fault of our own never shows. To run one case again, use its seed. */
class FuzzTest {
    private static final int CASES = 3000;

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

    static List<Verb> verbs() {
        return Verb.all();
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void neverAFaultOfOurOwn(Verb verb) {
        for (long seed = 0; seed < CASES; seed++) {
            byte[] document = changed(verb.example(), new SplittableRandom(seed));
            Typed typed = Typed.with(document, verb.name());
            String shown = "seed " + seed + ": " + new String(document, StandardCharsets.UTF_8);
            assertThat(typed.err()).as(shown).isEmpty();
            assertThat(typed.exit()).as(shown).isIn(0, 2);
            assertThat(typed.json().has("problems")).as(shown).isEqualTo(typed.exit() == 2);
            if (typed.exit() == 2) {
                assertThat(typed.json().size()).as(shown).isEqualTo(1);
                assertThat(typed.problems()).as(shown).isNotEmpty();
            }
        }
    }

    private static byte[] changed(String example, SplittableRandom random) {
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
