package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.Verb;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandLineTest {
    private static final String QUESTION = "{\"temperature_C\":20,\"relative_humidity_pct\":50}";

    @Test
    void helpListsEveryVerb() {
        Typed help = Typed.with("", "--help");
        assertThat(help.exit()).isZero();
        assertThat(help.err()).isEmpty();
        for (Verb verb : Verb.all()) {
            assertThat(help.out()).contains("\n  " + verb.name() + " ").contains(verb.summary());
        }
    }

    @Test
    void versionIsTheOneOfTheBuild() {
        assertThat(Typed.with("", "--version").out()).matches("Afterlength \\d+\\.\\d+.*\n");
    }

    @Test
    void anUnknownVerbIsRefusedWithTheOnesThatAreKnown() {
        Typed typed = Typed.with(QUESTION, "moistrue");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).isEmpty();
        assertThat(typed.problems())
                .containsExactly(": There is no verb \"moistrue\". Type one of: "
                        + Verb.all().stream().map(Verb::name).collect(Collectors.joining(", "))
                        + "; or --help to see what they do.");
    }

    @Test
    void nothingTypedOpensTheShopAndACommandGetsTheRest() {
        Command shop = new Remembering("shop");
        CommandLine commandLine =
                new CommandLine(Verb.all(), Map.of("demo", new Remembering("demo")), shop, Typed.MARCH);
        assertThat(Typed.at(commandLine, new byte[0]).out()).isEqualTo("shop []");
        assertThat(Typed.at(commandLine, new byte[0], "--port", "8080").out()).isEqualTo("shop [--port, 8080]");
        assertThat(Typed.at(commandLine, new byte[0], "demo", "here").out()).isEqualTo("demo [here]");
        assertThat(Typed.at(commandLine, new byte[0], "--help").out()).contains("\n  demo ");
    }

    @Test
    void anOptionNobodyKnowsIsRefused() {
        assertThat(Typed.with("", "--colour").problems())
                .containsExactly(": There is no option \"--colour\". Type --help to see what there is.");
        assertThat(Typed.with(QUESTION, "moisture", "--loger", "x.csv").problems())
                .containsExactly(": moisture has no option \"--loger\". The only option is --help; leave it out.");
    }

    @Test
    void aFileIsReadLikeStandardInput(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("räume.json"), "\uFEFF" + QUESTION);
        Typed fromFile = Typed.with("not read", "moisture", file.toString());
        assertThat(fromFile.exit()).isZero();
        assertThat(fromFile)
                .isEqualTo(Typed.with(QUESTION, "moisture"))
                .isEqualTo(Typed.with(QUESTION, "moisture", "-"));
    }

    @Test
    void aFileThatCannotBeReadIsRefused(@TempDir Path folder) {
        String missing = folder.resolve("missing.json").toString();
        assertThat(Typed.with("", "moisture", missing).problems())
                .containsExactly(": The file \"" + missing
                        + "\" is not there. Check its name, or name none to read standard input.");
        assertThat(Typed.with("", "moisture", folder.toString()).problems())
                .containsExactly(
                        ": The file \"" + folder + "\" cannot be read. Name a file that can be opened and read.");
        assertThat(Typed.with("", "moisture", "a", "b").problems())
                .containsExactly(
                        ": moisture reads one file and was given 2. Name one file, or none to read standard input.");
    }

    @Test
    void aDocumentWithoutEndIsRefusedBeforeItFillsTheMemory() {
        Typed typed = Typed.with(new byte[Question.LARGEST_BYTES + 1], "moisture");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.problems()).containsExactly(": The document is longer than 16 MiB. Give a shorter one.");
    }

    @Test
    void ourOwnFaultLeavesStandardOutputEmpty() {
        CommandLine commandLine =
                new CommandLine(List.of(new Broken()), Map.of(), new Remembering("shop"), Typed.MARCH);
        Typed typed = Typed.at(commandLine, "{}".getBytes(StandardCharsets.UTF_8), "broken");
        assertThat(typed.exit()).isEqualTo(1);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err()).isEqualTo("""
                        afterlength: our own fault, not yours: java.lang.IllegalStateException: as planned
                        Please keep what you typed and the document, and report them.
                        """);
    }

    private record Remembering(String name) implements Command {
        @Override
        public String summary() {
            return "remembers";
        }

        @Override
        public int run(List<String> arguments, Console console) {
            console.answer(name + " " + arguments);
            return 0;
        }
    }

    private static final class Broken implements Verb {
        @Override
        public String name() {
            return "broken";
        }

        @Override
        public String summary() {
            return "breaks";
        }

        @Override
        public String example() {
            return "{}";
        }

        @Override
        public String keys() {
            return "";
        }

        @Override
        public Reply answer(DocumentReader question) {
            throw new IllegalStateException("as planned");
        }
    }
}
