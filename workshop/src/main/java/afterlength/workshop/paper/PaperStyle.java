package afterlength.workshop.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheet that all text papers share, with the size of the sheet put before it. */
final class PaperStyle {
    private static final String SHEET = read();

    private PaperStyle() {}

    static String sheet(PaperSize size) {
        return "@page { size: " + size.width_mm() + "mm " + size.height_mm() + "mm; }\n" + SHEET;
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
