package afterlength.workshop.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;

/** The style sheet that all text papers share, with the size of the sheet and the words at its foot put in. */
final class PaperStyle {
    private static final String SHEET = read();

    private PaperStyle() {}

    static String sheet(PaperSize size, RunningWords running) {
        return SHEET.replace("{size}", size.width_mm() + "mm " + size.height_mm() + "mm")
                .replace("{running}", quoted(running.instrument() + " · " + running.date()))
                .replace("{page}", quoted(running.page() + " "))
                .replace("{of}", quoted(" " + running.of() + " "));
    }

    /** As a style sheet writes words; whatever could end them is written by its number. */
    private static String quoted(String words) {
        StringBuilder quoted = new StringBuilder("\"");
        Normalizer.normalize(words, Normalizer.Form.NFC).codePoints().forEach(sign -> {
            if (Character.isLetterOrDigit(sign) || sign == ' ') {
                quoted.appendCodePoint(sign);
            } else {
                quoted.append('\\').append(String.format(Locale.ROOT, "%x ", sign));
            }
        });
        return quoted.append('"').toString();
    }

    private static String read() {
        try (InputStream stream = PaperStyle.class.getResourceAsStream("paper.css")) {
            if (stream == null) {
                throw new IllegalStateException("the style sheet paper.css is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the style sheet paper.css cannot be read", broken);
        }
    }
}
