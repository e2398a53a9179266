package afterlength.start;

import afterlength.start.verbs.Verb;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What {@code --help} prints. */
final class Help {
    private Help() {}

    /** The help of one verb. The example is the only thing in braces, so that it can be cut out and pasted back. */
    static String of(Verb verb) {
        return "./afterlength " + verb.name() + " [FILE]"
                + (verb.draws() ? " [--pdf FILE] [--svg FILE] [--paper A4|Letter]" : "") + "\n\n"
                + capitalised(verb.summary()) + ".\n"
                + "Reads one JSON document from FILE, or from standard input when no FILE is named, and writes one to standard"
                + " output.\n\nAn example, answered just as it stands:\n\n"
                + verb.example() + "\nKeys\n\n" + verb.keys()
                + (verb.draws() ? "\nOptions\n\n" + SheetWishes.OPTIONS : "");
    }

    static String of(List<Verb> verbs, Map<String, Command> commands, Command alone, String version) {
        return "Afterlength " + version + "\n\n"
                + line("./afterlength", alone.summary())
                + line(
                        "./afterlength VERB [FILE]",
                        "reads one JSON document from FILE or standard input, writes one answer")
                + line("./afterlength VERB --help", "shows an example document that works when pasted back")
                + line("./afterlength --version", "shows which build this is")
                + "\nVerbs\n\n"
                + verbs.stream()
                        .map(verb -> line("  " + verb.name(), verb.summary()))
                        .collect(Collectors.joining())
                + (commands.isEmpty() ? "" : "\nAnd\n\n")
                + commands.entrySet().stream()
                        .map(entry ->
                                line("  " + entry.getKey(), entry.getValue().summary()))
                        .collect(Collectors.joining())
                + "\nExit code 0: answered. 2: the input was refused, every problem is in the answer. 1: our own fault.\n";
    }

    private static String line(String left, String right) {
        return String.format("%-28s%s%n", left, right).replace(System.lineSeparator(), "\n");
    }

    private static String capitalised(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
