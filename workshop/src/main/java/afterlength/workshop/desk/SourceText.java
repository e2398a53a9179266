package afterlength.workshop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small reading of our own bibliography: headings, paragraphs, lists, and within them emphasis and code. It knows only what
 * {@code docs/sources.md} uses; links, pictures and tables are shown as they are written.
 */
final class SourceText {
    private static final Pattern SPAN = Pattern.compile("\\*\\*(.+?)\\*\\*|\\*([^*\\s][^*]*?)\\*|`([^`]+)`");

    private static final Pattern BETWEEN_PARTS = Pattern.compile("\\R\\s*\\R");
    private static final Pattern BETWEEN_BULLETS = Pattern.compile("\\R[-*] +");
    private static final Pattern HEADING = Pattern.compile("(#{1,6}) +(.*)(?:\\R([\\s\\S]*))?");

    private SourceText() {}

    /** A piece of the text. */
    sealed interface Block {
        /** The anchor is the heading's own text, as the code cites it. */
        record Heading(int level, String text) implements Block {}

        record Paragraph(List<Span> spans) implements Block {}

        record Bullets(List<List<Span>> items) implements Block {}
    }

    /** Words of one face. */
    record Span(Face face, String words) {}

    enum Face {
        PLAIN,
        EMPHASIS,
        CODE
    }

    static List<Block> read(String text) {
        List<Block> blocks = new ArrayList<>();
        BETWEEN_PARTS.splitAsStream(text.strip()).forEach(part -> addPart(blocks, part.strip()));
        return blocks;
    }

    /** A part may begin with a heading that its paragraph follows without an empty line. */
    private static void addPart(List<Block> blocks, String part) {
        Matcher heading = HEADING.matcher(part);
        if (heading.matches()) {
            blocks.add(new Block.Heading(
                    heading.group(1).length(), heading.group(2).strip()));
            String rest = heading.group(3);
            if (rest != null) {
                addPart(blocks, rest.strip());
            }
        } else if (part.startsWith("- ") || part.startsWith("* ")) {
            blocks.add(bullets(part));
        } else if (!part.isEmpty()) {
            blocks.add(new Block.Paragraph(spans(part)));
        }
    }

    private static Block bullets(String part) {
        return new Block.Bullets(BETWEEN_BULLETS
                .splitAsStream(part.substring(2))
                .map(SourceText::spans)
                .toList());
    }

    static List<Span> spans(String text) {
        String line = text.replaceAll("\\s*\\R\\s*", " ");
        List<Span> spans = new ArrayList<>();
        Matcher matcher = SPAN.matcher(line);
        int from = 0;
        while (matcher.find()) {
            add(spans, Face.PLAIN, line.substring(from, matcher.start()));
            boolean code = matcher.group(3) != null;
            add(spans, code ? Face.CODE : Face.EMPHASIS, code ? matcher.group(3) : emphasised(matcher));
            from = matcher.end();
        }
        add(spans, Face.PLAIN, line.substring(from));
        return spans;
    }

    private static String emphasised(Matcher matcher) {
        return matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
    }

    private static void add(List<Span> spans, Face face, String words) {
        if (!words.isEmpty()) {
            spans.add(new Span(face, words));
        }
    }
}
