package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One bibliography: what the code cites stands there, and what stands there is cited. */
class SourcesTest {
    private static final Path PROJECT = Path.of("..");
    private static final Pattern CITED = Pattern.compile("sources\\.md#([a-z0-9-]+)");
    private static final Pattern ENTRY = Pattern.compile("(?m)^## ([a-z0-9-]+)$");

    @Test
    void everyCitedSourceStandsInTheBibliography() throws IOException {
        assertThat(entries()).containsAll(cited());
    }

    @Test
    void everyEntryIsCited() throws IOException {
        assertThat(cited()).containsAll(entries());
    }

    private static Set<String> entries() throws IOException {
        return matches(ENTRY, Files.readString(PROJECT.resolve("docs/sources.md")));
    }

    private static Set<String> cited() throws IOException {
        Set<String> cited = new TreeSet<>();
        try (Stream<Path> files = Files.walk(PROJECT)) {
            for (Path file : files.filter(SourcesTest::isOurs).toList()) {
                cited.addAll(matches(CITED, Files.readString(file)));
            }
        }
        return cited;
    }

    private static boolean isOurs(Path file) {
        String name = file.toString();
        return name.contains("/src/")
                && !name.contains("/target/")
                && name.matches(".*\\.(java|jte|csv|sql|properties)");
    }

    private static Set<String> matches(Pattern pattern, String text) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }
}
