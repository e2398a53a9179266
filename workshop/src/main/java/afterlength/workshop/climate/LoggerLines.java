package afterlength.workshop.climate;

import afterlength.craft.air.LoggerReader;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a logger file, one at a time, however it ends them. A line beyond {@link LoggerReader#LONGEST_ROW} is cut one letter
 * later, so that the reader sees that it is too long and the memory does not. UTF-16 is known by its mark; everything else is
 * read as UTF-8, and letters that are none become replacement marks: readings are digits.
 */
final class LoggerLines {
    private static final int LINE_FEED = '\n';
    private static final int CARRIAGE_RETURN = '\r';

    private final Reader reader;
    private boolean afterReturn;

    private LoggerLines(Reader reader) {
        this.reader = reader;
    }

    static LoggerLines of(InputStream file) throws IOException {
        BufferedInputStream bytes = new BufferedInputStream(file, 1 << 16);
        return new LoggerLines(new BufferedReader(new InputStreamReader(bytes, charset(bytes)), 1 << 16));
    }

    private static Charset charset(BufferedInputStream bytes) throws IOException {
        bytes.mark(2);
        int first = bytes.read();
        int second = bytes.read();
        bytes.reset();
        if (first == 0xFF && second == 0xFE) {
            return StandardCharsets.UTF_16LE;
        }
        return first == 0xFE && second == 0xFF ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    }

    /** The next line without its end, or null behind the last. */
    @Nullable
    String next() throws IOException {
        StringBuilder line = new StringBuilder();
        int letter = reader.read();
        if (afterReturn && letter == LINE_FEED) {
            letter = reader.read();
        }
        afterReturn = false;
        if (letter < 0) {
            return null;
        }
        while (letter >= 0 && letter != LINE_FEED && letter != CARRIAGE_RETURN) {
            if (line.length() <= LoggerReader.LONGEST_ROW) {
                line.append((char) letter);
            }
            letter = reader.read();
        }
        afterReturn = letter == CARRIAGE_RETURN;
        return line.toString();
    }
}
