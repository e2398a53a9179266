package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Nothing that people read promises a result: templates, texts in the code, tables and the papers of the project are read for words
 * that no workshop can answer for. See docs/decisions/0005-words.md.
 */
class WordsTest {
    private static final Path PROJECT = Path.of("..");

    private static final Pattern PROMISE = Pattern.compile(
            "\\b(invisib\\w*|guarante\\w*|safe|safely|unsafe|foolproof|undetectab\\w*|perfect match)\\b",
            Pattern.CASE_INSENSITIVE);

    /** A Java text, escapes and all, or a text block. */
    private static final Pattern TEXT = Pattern.compile("\"\"\"[\\s\\S]*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"");

    /** A comment is not read by people at the bench; a text may hold what looks like one, and is found first. */
    private static final Pattern COMMENT = Pattern.compile("/\\*[\\s\\S]*?\\*/|//[^\\n]*");

    private static final Pattern EITHER = Pattern.compile(TEXT.pattern() + "|" + COMMENT.pattern());

    /** Where such a word may stand, by the end of the file's name, with the words around it and why. */
    private static final Map<String, List<String>> PERMITTED = Map.of(
            ".jte", List.of("$unsafe{"), // the template engine's own word for a text that is already written as markup
            "findings_vocabulary.csv",
                    List.of("tailpiece or tailgut unsafe"), // names what was found on a tailpiece, promises nothing
            "treatments.csv", List.of("tailpiece or tailgut unsafe"), // refers to that finding by its name
            "CONTRIBUTING.md",
                    List.of("No result is called \"invisible\", \"guaranteed\" or \"safe\"")); // quotes this rule

    @Test
    void nothingPromisesAResult() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(PROJECT)) {
            files.filter(WordsTest::isRead).sorted().forEach(file -> found.addAll(promises(file)));
        }
        assertThat(found).isEmpty();
    }

    @Test
    void thePatternsFindWhatTheyShall() {
        assertThat(textsOf("// safe\nString a = \"a safe \\\"glue\\\" // not cut\"; /* guaranteed */"))
                .isEqualTo("\"a safe \\\"glue\\\" // not cut\"");
        assertThat(PROMISE.matcher("an Invisible repair").find()).isTrue();
        assertThat(PROMISE.matcher("it is guaranteed").find()).isTrue();
        assertThat(PROMISE.matcher("safety glasses").find()).isFalse();
    }

    private static boolean isRead(Path file) {
        String name = PROJECT.relativize(file).toString().replace('\\', '/');
        boolean inMain = name.contains("/src/main/") && name.matches(".*\\.(java|jte|csv|json|js|sql|svg|txt)");
        boolean aPaper = name.matches("[A-Z]+\\.md") || name.matches("docs/.*\\.md");
        boolean foreign = name.contains("/target/") || name.contains("LICENSE") || name.endsWith("htmx.min.js");
        return (inMain || aPaper) && !foreign && Files.isRegularFile(file);
    }

    private static List<String> promises(Path file) {
        try {
            String all = Files.readString(file);
            String words = file.toString().endsWith(".java") ? textsOf(all) : all;
            for (String permitted : permitted(file)) {
                words = words.replace(permitted, "");
            }
            String read = words;
            return PROMISE.matcher(read)
                    .results()
                    .map(hit -> PROJECT.relativize(file) + ": …" + around(read, hit.start(), hit.end()) + "…")
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> permitted(Path file) {
        return PERMITTED.entrySet().stream()
                .filter(entry -> file.toString().endsWith(entry.getKey()))
                .flatMap(entry -> entry.getValue().stream())
                .toList();
    }

    private static String textsOf(String java) {
        StringBuilder texts = new StringBuilder();
        Matcher matcher = EITHER.matcher(java);
        while (matcher.find()) {
            if (matcher.group().startsWith("\"")) {
                texts.append(matcher.group());
            }
        }
        return texts.toString();
    }

    private static String around(String words, int from, int to) {
        return words.substring(Math.max(0, from - 40), Math.min(words.length(), to + 40))
                .replaceAll("\\s+", " ");
    }
}
