package afterlength.start;

import afterlength.start.verbs.Verb;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What came back when something was typed: the command line, run inside the test. */
record Typed(int exit, String out, String err) {
    /** The day on every sheet of these tests. */
    static final Clock MARCH = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);

    static Typed with(String standardInput, String... arguments) {
        return with(standardInput.getBytes(StandardCharsets.UTF_8), arguments);
    }

    static Typed with(byte[] standardInput, String... arguments) {
        return at(new CommandLine(Verb.all(), Map.of(), new OpenShop(), MARCH), standardInput, arguments);
    }

    static Typed at(CommandLine commandLine, byte[] standardInput, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new ByteArrayInputStream(standardInput),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        int exit = commandLine.run(List.of(arguments), console);
        return new Typed(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The answer read by another reader than our own. */
    JsonNode json() {
        return JsonMapper.shared().readTree(out);
    }

    /** Place and text of every problem, as {@code "/place: text"}. */
    List<String> problems() {
        return json().get("problems").values().stream()
                .map(problem -> problem.get("at").asString() + ": "
                        + problem.get("message").asString())
                .toList();
    }
}
