package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardCommandTest {
    @TempDir
    Path folder;

    private static Typed card(String... arguments) {
        CommandLine line = new CommandLine(Verb.all(), Map.of("card", new CardCommand()), new OpenShop(), Typed.MARCH);
        return Typed.at(line, new byte[0], arguments);
    }

    @Test
    void theCardIsWrittenAsPdf() throws IOException {
        Path file = folder.resolve("card.pdf");
        Typed typed = card("card", "--card", "pocket", "--paper", "Letter", "--number", "12", "--to", file.toString());
        assertThat(typed.exit()).isZero();
        assertThat(typed.err()).isEqualTo("Wrote " + file + ". Print it at 100 % and measure both check lines.\n");
        assertThat(new String(Files.readAllBytes(file), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
    }

    @Test
    void whatIsWrongIsToldAtOnce() {
        Typed typed = card("card", "--card", "visiting", "--paper", "a5", "--number", "x", "--ink");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.problems())
                .containsExactly(
                        ": There is no option \"--ink\". Type --help to see what there is.",
                        ": The card is \"visiting\"; give body or pocket.",
                        ": The paper is \"a5\"; give a4 or letter.",
                        ": The number is \"x\"; give a whole number from 1 to 9999.");
    }

    @Test
    void aPlaceThatCannotBeWrittenIsRefused() {
        String file = folder.resolve("none").resolve("card.pdf").toString();
        assertThat(card("card", "--to", file).problems())
                .containsExactly(": The file \"" + file + "\" cannot be written. Name another place with --to.");
    }
}
