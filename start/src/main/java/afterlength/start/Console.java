package afterlength.start;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The three streams of the program. Text goes out as UTF-8, whatever the terminal of the day prefers. */
public record Console(InputStream in, PrintStream out, PrintStream err) {
    /** Writes an answer: nothing else is ever written to standard output. */
    public void answer(String text) {
        write(out, text);
    }

    /** Says something to the person at the terminal. */
    public void say(String text) {
        write(err, text + "\n");
    }

    private static void write(PrintStream stream, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        stream.write(bytes, 0, bytes.length);
        stream.flush();
    }
}
