package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.Reply;
import afterlength.start.verbs.Verb;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Sends what was typed to the one who answers it: nothing, or options first, to the shop; a verb to its document; another
 * command to itself. A word nobody knows is refused with the list of those that are known.
 */
public final class CommandLine {
    private final List<Verb> verbs;
    private final Map<String, Command> commands;
    private final Command shop;
    private final Clock clock;

    /**
     * @param commands other commands by name, listed in this order
     * @param shop what happens when nothing is typed, or options only
     * @param clock the day that stands on a sheet
     */
    public CommandLine(List<Verb> verbs, Map<String, Command> commands, Command shop, Clock clock) {
        this.verbs = List.copyOf(verbs);
        this.commands = new LinkedHashMap<>(commands);
        this.shop = shop;
        this.clock = clock;
    }

    /** Runs to the end and returns the exit code; a fault of ours is reported on standard error in one line. */
    public int run(List<String> arguments, Console console) {
        try {
            return dispatch(arguments, console);
        } catch (RuntimeException | StackOverflowError fault) {
            console.say("afterlength: our own fault, not yours: " + fault
                    + "\nPlease keep what you typed and the document, and report them.");
            return Exit.OUR_FAULT;
        }
    }

    private int dispatch(List<String> arguments, Console console) {
        String first = arguments.isEmpty() ? "" : arguments.get(0);
        if (first.equals("--help") || first.equals("-h")) {
            console.answer(Help.of(verbs, commands, shop, Version.get()));
            return Exit.ANSWERED;
        }
        if (first.equals("--version")) {
            console.answer("Afterlength " + Version.get() + "\n");
            return Exit.ANSWERED;
        }
        if (arguments.isEmpty() || first.startsWith("-")) {
            return shop.run(arguments, console);
        }
        return named(first, arguments.subList(1, arguments.size()), console);
    }

    private int named(String name, List<String> rest, Console console) {
        Optional<Verb> verb =
                verbs.stream().filter(known -> known.name().equals(name)).findFirst();
        if (LoggerRunner.isAsked(name, rest)) {
            return LoggerRunner.run(rest, console);
        }
        Command command = commands.get(name);
        boolean asksCommand = command != null && rest.stream().anyMatch(CommandLine::isOptionOfCommand);
        if (verb.isPresent() && !asksCommand) {
            return VerbRunner.run(verb.get(), rest, console, clock);
        }
        if (command != null) {
            return command.run(rest, console);
        }
        console.answer(unknown(name).json());
        return Exit.REFUSED;
    }

    private static boolean isOptionOfCommand(String argument) {
        return argument.startsWith("--") && !argument.equals("--help");
    }

    private Reply unknown(String name) {
        String known = Stream.concat(verbs.stream().map(Verb::name), commands.keySet().stream())
                .collect(Collectors.joining(", "));
        return new Reply.Refused(List.of(new Problem(
                "",
                name,
                "There is no verb \"" + name + "\". Type one of: " + known + "; or --help to see what they do.")));
    }
}
