package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.start.verbs.Verb;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Runs one verb: its help, or one document from a file or standard input, its sheets, and the reply to standard output. */
final class VerbRunner {
    private final Verb verb;
    private final Console console;
    private final Clock clock;

    private VerbRunner(Verb verb, Console console, Clock clock) {
        this.verb = verb;
        this.console = console;
        this.clock = clock;
    }

    static int run(Verb verb, List<String> arguments, Console console, Clock clock) {
        return new VerbRunner(verb, console, clock).run(arguments);
    }

    private int run(List<String> arguments) {
        if (arguments.contains("--help") || arguments.contains("-h")) {
            console.answer(Help.of(verb));
            return Exit.ANSWERED;
        }
        SheetWishes wishes = SheetWishes.read(verb, arguments);
        Reply reply = wishes.problems().isEmpty() ? answer(wishes) : new Reply.Refused(wishes.problems());
        console.answer(reply.json());
        return reply instanceof Reply.Answered ? Exit.ANSWERED : Exit.REFUSED;
    }

    private Reply answer(SheetWishes wishes) {
        Question question = wishes.findQuestion().map(Question::from).orElseGet(() -> Question.from(console.in()));
        if (question instanceof Question.Opened opened) {
            return answer(opened.document(), wishes);
        }
        return new Reply.Refused(List.of(((Question.Unreadable) question).problem()));
    }

    private Reply answer(DocumentReader document, SheetWishes wishes) {
        Reply reply = verb.answer(document);
        // A verb that overlooked a problem does not get its answer out.
        if (document.hasProblems()) {
            return new Reply.Refused(document.problems());
        }
        List<Problem> unwritten = reply instanceof Reply.Answered ? draw(document, wishes) : List.of();
        return unwritten.isEmpty() ? reply : new Reply.Refused(unwritten);
    }

    private List<Problem> draw(DocumentReader answered, SheetWishes wishes) {
        return wishes.wantsSheet()
                ? verb.findSheet(answered)
                        .map(sheet -> SheetFiles.write(sheet, wishes, LocalDate.now(clock)))
                        .orElse(List.of())
                : List.of();
    }
}
