package afterlength.workshop.climate;

import afterlength.craft.air.LoggerLayout;
import afterlength.craft.air.LoggerReader;
import afterlength.craft.air.LoggerReading;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** Reads a logger file as a stream; the file is never held whole. */
public final class LoggerFile {
    /** As many lines as a person wants to see to know a layout; the longest heading known has thirteen. */
    public static final int HEAD_LINES = 60;

    private LoggerFile() {}

    public static LoggerReading read(InputStream file, LoggerLayout layout) throws IOException {
        LoggerLines lines = LoggerLines.of(file);
        LoggerReader reader = new LoggerReader(layout);
        String line = lines.next();
        while (line != null && reader.wantsMore()) {
            reader.line(line);
            line = lines.next();
        }
        return reader.finish();
    }

    /** The first lines, to show and to guess from. */
    public static List<String> head(InputStream file) throws IOException {
        LoggerLines lines = LoggerLines.of(file);
        List<String> head = new ArrayList<>();
        String line = lines.next();
        while (line != null && head.size() < HEAD_LINES) {
            head.add(line);
            line = lines.next();
        }
        return head;
    }
}
