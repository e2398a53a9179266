package afterlength.workshop.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the database lets through and the pattern then keeps, against {@link WordSweep#without}, which looks at every text without asking
 * the database: whatever the letters, no text that holds a word is passed over.
 */
class WordSweepPropertyTest {
    private static final String[] SIGNS = {
        "a",
        "B",
        "e",
        "g",
        "i",
        "I",
        "k",
        "K",
        "s",
        "S",
        "\u212a",
        "\u017f",
        "\u0131",
        "\u0130",
        "ß",
        "é",
        "É",
        "Å",
        "\u212b",
        "%",
        "_",
        "\\",
        "'",
        "*",
        "[",
        " ",
        "  ",
        "\n",
        "-",
        ".",
        "7",
        "山",
        "ש",
        "\ud835\udc00",
        "λ",
        "Λ",
        "ς",
        "σ"
    };

    @TempDir
    Path root;

    @Test
    void noTextThatHoldsAWordIsPassedOver() {
        Random random = new Random(20261201);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            texts.add("x" + drawn(random, 3 + random.nextInt(12)) + "x");
        }
        Ledger ledger = Ledger.open(ShopFolder.open(root));
        ledger.change(handle -> texts.forEach(text -> handle.createUpdate(
                        "INSERT INTO owner (name, email, phone, address, remark) VALUES ('N', '', '', '', :text)")
                .bind("text", text)
                .execute()));
        int held = 0;
        for (int round = 0; round < 300; round++) {
            List<String> words = List.of(part(texts.get(random.nextInt(texts.size())), random), drawn(random, 3));
            List<String> sound =
                    words.stream().filter(word -> word.strip().length() >= 3).toList();
            Set<String> expected = texts.stream()
                    .filter(text -> !WordSweep.without(text, sound, "\u0000").equals(text))
                    .collect(Collectors.toCollection(TreeSet::new));
            List<WordSweep.Found> found = ledger.read(handle -> WordSweep.look(handle, sound));
            assertThat(new TreeSet<>(found.stream().map(WordSweep.Found::before).toList()))
                    .as("texts with %s", sound)
                    .isEqualTo(expected);
            held += expected.size();
        }
        assertThat(held).as("words that were found at all").isGreaterThan(150);
    }

    private static String drawn(Random random, int signs) {
        return random.ints(signs, 0, SIGNS.length)
                .mapToObj(index -> SIGNS[index])
                .collect(Collectors.joining());
    }

    /** Some letters from a text, with capitals changed. */
    private static String part(String text, Random random) {
        int[] letters = text.codePoints().toArray();
        int from = random.nextInt(letters.length - 3);
        String part = new String(letters, from, 3 + random.nextInt(letters.length - from - 2));
        return random.nextBoolean() ? part.toUpperCase(Locale.ROOT) : part;
    }
}
