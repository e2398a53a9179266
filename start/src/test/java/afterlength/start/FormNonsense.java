package afterlength.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** What is sent into a form to try it: pieces of good and bad values, files with broken bytes, drawn from a seed. */
final class FormNonsense {
    private static final List<String> PIECES = List.of(
            "",
            " ",
            "0",
            "-1",
            "1",
            "2",
            "12",
            "12,5",
            "12.5",
            "0,0001",
            "1e3",
            "1e308",
            "-1e308",
            "1e999",
            "NaN",
            "Infinity",
            "∞",
            "١٢",
            "½",
            "999999999",
            "9999999999999999999999",
            "0x10",
            "1.2.3",
            "1,2,3",
            "1 000",
            "true",
            "null",
            "2026-03-14",
            "2026-02-30",
            "0000-00-00",
            "9999-12-31",
            "+999999999-01-01",
            "2026-03-14T10:30",
            "10:30",
            "25:61",
            "VIOLA",
            "BEFORE",
            "AFTER",
            "FULL",
            "YES",
            "yes",
            "even play",
            "square",
            "front",
            "a",
            "A4",
            "E5",
            "seam",
            "[[0,0],[10,0],[10,10]]",
            "0 0 10 0 10 10",
            "0,0; 10,0; 10,10",
            "M0 0L10 10",
            "{\"a\":1}",
            "[]",
            "400 10 0.1 0.2 0.3",
            "L*a*b*",
            "50 10 10",
            "\uD800",
            "\u0000",
            "\uFFFE",
            "\n",
            "\r\n",
            "a\nb\nc",
            "é".repeat(70),
            "x".repeat(5000),
            "9".repeat(400),
            "%",
            "%00",
            "&",
            "<b>",
            "\"",
            "'",
            "\\",
            "..",
            "/",
            "-",
            "–",
            "±",
            "3 ± 0.5");

    private FormNonsense() {}

    /** Most fields as the page fills them, up to five as pieces; now and then one is missing, doubled or unknown. */
    static List<Map.Entry<String, String>> fields(PageForm form, SplittableRandom random) {
        int spoilt = random.nextInt(6);
        List<Map.Entry<String, String>> fields = new ArrayList<>(form.filled(field -> good(field, random)));
        for (int n = 0; n < spoilt && !fields.isEmpty(); n++) {
            int at = random.nextInt(fields.size());
            String name = fields.get(at).getKey();
            switch (random.nextInt(10)) {
                case 0 -> fields.remove(at);
                case 1 -> fields.add(Map.entry(name, piece(random)));
                case 2 -> fields.add(Map.entry(piece(random), piece(random)));
                default -> fields.set(at, Map.entry(name, piece(random)));
            }
        }
        return fields;
    }

    /**
     * In one of three cases somebody types words of their own into a field that can be written, right or wrong.
     *
     * @return the words; empty when nothing was typed
     */
    static String typeWords(PageForm form, List<Map.Entry<String, String>> fields, long seed, SplittableRandom random) {
        List<String> written = form.fields().stream()
                .filter(PageForm.Field::written)
                .map(PageForm.Field::name)
                .toList();
        if (written.isEmpty() || random.nextInt(3) != 0) {
            return "";
        }
        String name = written.get(random.nextInt(written.size()));
        String words = "words of seed " + seed;
        fields.removeIf(field -> field.getKey().equals(name));
        fields.add(Map.entry(name, words));
        return words;
    }

    private static PageForm.Field good(PageForm.Field field, SplittableRandom random) {
        String value = field.value();
        if (!field.choices().isEmpty() && random.nextInt(3) == 0) {
            value = field.choices().get(random.nextInt(field.choices().size()));
        } else if (value.isEmpty() && field.written()) {
            value = field.kind().equals("number") ? "12" : field.kind().equals("date") ? "2026-03-14" : "words";
        }
        return new PageForm.Field(field.name(), field.kind(), value, field.choices());
    }

    static String piece(SplittableRandom random) {
        return PIECES.get(random.nextInt(PIECES.size()));
    }

    static byte[] file(SplittableRandom random) throws IOException {
        byte[] bytes = random.nextBoolean()
                ? NoisyPicture.of(20, 20, random)
                : ("time,temperature,humidity\n2026-01-01 00:00,20.5,45\n" + piece(random))
                        .getBytes(StandardCharsets.UTF_8);
        for (int n = random.nextInt(6); n > 0; n--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
    }
}
