package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.Verb;
import java.util.List;

/** Runs one verb: its help, or one document from a file or standard input and the reply to standard output. */
final class VerbRunner {
    private static final String STANDARD_INPUT = "-";

    private final Verb verb;
    private final Console console;

    private VerbRunner(Verb verb, Console console) {
        this.verb = verb;
        this.console = console;
    }

    static int run(Verb verb, List<String> arguments, Console console) {
        return new VerbRunner(verb, console).run(arguments);
    }

    private int run(List<String> arguments) {
        if (arguments.contains("--help") || arguments.contains("-h")) {
            console.answer(Help.of(verb));
            return Exit.ANSWERED;
        }
        List<Problem> problems = arguments.stream()
                .filter(VerbRunner::isOption)
                .map(this::unknownOption)
                .toList();
        if (!problems.isEmpty()) {
            return reply(new Reply.Refused(problems));
        }
        return reply(arguments.size() > 1 ? tooMany(arguments) : answer(arguments));
    }

    private Reply answer(List<String> arguments) {
        Question question = arguments.isEmpty() || arguments.get(0).equals(STANDARD_INPUT)
                ? Question.from(console.in())
                : Question.from(arguments.get(0));
        if (question instanceof Question.Opened opened) {
            return answer(opened.document());
        }
        return new Reply.Refused(List.of(((Question.Unreadable) question).problem()));
    }

    private Reply answer(DocumentReader document) {
        Reply reply = verb.answer(document);
        // A verb that overlooked a problem does not get its answer out.
        return document.hasProblems() ? new Reply.Refused(document.problems()) : reply;
    }

    private int reply(Reply reply) {
        console.answer(reply.json());
        return reply instanceof Reply.Answered ? Exit.ANSWERED : Exit.REFUSED;
    }

    private static boolean isOption(String argument) {
        return argument.startsWith("-") && !argument.equals(STANDARD_INPUT);
    }

    private Problem unknownOption(String option) {
        return new Problem(
                "",
                option,
                verb.name() + " has no option \"" + option + "\". The only option is --help; leave it out.");
    }

    private Reply tooMany(List<String> arguments) {
        return new Reply.Refused(List.of(new Problem(
                "",
                String.join(" ", arguments),
                verb.name() + " reads one file and was given " + arguments.size()
                        + ". Name one file, or none to read standard" + " input.")));
    }
}
