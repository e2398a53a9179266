package afterlength.workshop.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The bytes of the faces, read once and kept; a PDF library gets its own reading of them each time. */
final class FontFiles {
    private static final Map<Face, byte[]> BYTES = new EnumMap<>(Face.class);

    static {
        for (Face face : Face.values()) {
            BYTES.put(face, read(face.file()));
        }
    }

    private FontFiles() {}

    static byte[] bytes(Face face) {
        return Objects.requireNonNull(BYTES.get(face));
    }

    /** A fresh reading, to be closed by whoever asked. */
    static TrueTypeFont parse(Face face) {
        try {
            return new TTFParser().parse(new RandomAccessReadBuffer(bytes(face)));
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + face.file() + " cannot be read", broken);
        }
    }

    private static byte[] read(String file) {
        try (InputStream stream = FontFiles.class.getResourceAsStream("fonts/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("the font " + file + " is missing from the program");
            }
            return stream.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + file + " cannot be read", broken);
        }
    }
}
