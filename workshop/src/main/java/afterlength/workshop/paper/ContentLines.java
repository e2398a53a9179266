package afterlength.workshop.paper;

import java.nio.charset.StandardCharsets;

/**
 * The lines that calendars and cards are written in, RFC 5545 section 3.1 and RFC 6350 section 3.2: a name, a colon, a value; at most
 * 75 octets before it is folded, never inside a character; ended by CR LF. Source: docs/sources.md#content-lines.
 */
final class ContentLines {
    private static final int LONGEST_OCTETS = 75;

    private final StringBuilder text = new StringBuilder();

    /** A line whose value is written as it is: a date, a number, a fixed word. */
    ContentLines plain(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** A line whose value is words of a person: commas, semicolons, backslashes and line ends are told apart from our own. */
    ContentLines words(String name, String value) {
        return plain(name, escaped(value));
    }

    /** Escapes words, as in one part of a structured value. */
    static String escaped(String value) {
        return value.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n")
                .replace("\n", "\\n")
                .replace("\r", "\\n");
    }

    private void fold(String line) {
        int octets = 0;
        for (int at = 0; at < line.length(); at += Character.charCount(line.codePointAt(at))) {
            String character = Character.toString(line.codePointAt(at));
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST_OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(character);
            octets += size;
        }
        text.append("\r\n");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
