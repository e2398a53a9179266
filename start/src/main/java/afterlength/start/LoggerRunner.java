package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.LoggerAnswer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** {@code moisture --logger FILE.csv [LAYOUT.json]}: a record of air in place of one document. */
final class LoggerRunner {
    private static final String OPTION = "--logger";

    private LoggerRunner() {}

    static boolean isAsked(String verb, List<String> arguments) {
        return verb.equals("moisture") && arguments.contains(OPTION) && !arguments.contains("--help");
    }

    static int run(List<String> arguments, Console console) {
        Reply reply = answer(arguments, console);
        console.answer(reply.json());
        return reply instanceof Reply.Answered ? Exit.ANSWERED : Exit.REFUSED;
    }

    private static Reply answer(List<String> arguments, Console console) {
        List<String> others = new ArrayList<>(arguments);
        int at = others.indexOf(OPTION);
        others.remove(at);
        if (at == others.size()) {
            return refused(OPTION, "The option --logger wants a file behind it, such as --logger FILE.csv.");
        }
        String file = others.remove(at);
        if (others.size() > 1 || others.stream().anyMatch(other -> other.startsWith("--"))) {
            return refused(
                    String.join(" ", others),
                    "moisture --logger reads one logger file and at most one layout behind it. Leave the rest out.");
        }
        return others.isEmpty()
                ? answer(file, DocumentReader.of("{}".getBytes(StandardCharsets.UTF_8)))
                : answer(file, others.get(0), console);
    }

    private static Reply answer(String file, String layout, Console console) {
        Question question = layout.equals("-") ? Question.from(console.in()) : Question.from(layout);
        return question instanceof Question.Opened opened
                ? answer(file, opened.document())
                : new Reply.Refused(List.of(((Question.Unreadable) question).problem()));
    }

    private static Reply answer(String file, DocumentReader layout) {
        try {
            Path path = Path.of(file);
            return LoggerAnswer.of(() -> Files.newInputStream(path), layout);
        } catch (NoSuchFileException missing) {
            return refused(file, "The file \"" + file + "\" is not there. Check its name.");
        } catch (IOException | InvalidPathException broken) {
            return refused(file, "The file \"" + file + "\" cannot be read. Name a file that can be opened and read.");
        }
    }

    private static Reply refused(String value, String message) {
        return new Reply.Refused(List.of(new Problem("", value, message)));
    }
}
