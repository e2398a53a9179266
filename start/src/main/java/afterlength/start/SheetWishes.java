package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.verbs.Verb;
import afterlength.workshop.paper.PaperSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What was typed behind a verb: at most one file to read, and, for a verb that draws, where its sheet goes. Everything that is wrong
 * is noted at once.
 */
final class SheetWishes {
    static final String OPTIONS = """
              --pdf FILE              draws the sheet at 1 : 1 as PDF as well
              --svg FILE              the same for a cutter, one user unit to the millimetre
              --paper A4 or Letter    for --pdf; usual A4
            """;

    private static final String STANDARD_INPUT = "-";

    private final Verb verb;
    private final List<String> questions = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private @Nullable String pdf;
    private @Nullable String svg;
    private PaperSize paper = PaperSize.A4;

    private SheetWishes(Verb verb) {
        this.verb = verb;
    }

    static SheetWishes read(Verb verb, List<String> arguments) {
        SheetWishes wishes = new SheetWishes(verb);
        for (int n = 0; n < arguments.size(); n++) {
            String argument = arguments.get(n);
            if (!argument.startsWith("-") || argument.equals(STANDARD_INPUT)) {
                wishes.questions.add(argument);
            } else if (verb.draws() && List.of("--pdf", "--svg", "--paper").contains(argument)) {
                wishes.take(argument, n + 1 < arguments.size() ? arguments.get(++n) : "");
            } else {
                wishes.unknown(argument);
            }
        }
        wishes.checkQuestions();
        return wishes;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The file to read; empty for standard input. */
    Optional<String> findQuestion() {
        return questions.stream().filter(file -> !file.equals(STANDARD_INPUT)).findFirst();
    }

    Optional<String> findPdf() {
        return Optional.ofNullable(pdf);
    }

    Optional<String> findSvg() {
        return Optional.ofNullable(svg);
    }

    boolean wantsSheet() {
        return pdf != null || svg != null;
    }

    PaperSize paper() {
        return paper;
    }

    private void take(String option, String value) {
        if (value.isBlank() || value.startsWith("-")) {
            note(option, "The option " + option + " wants a value behind it.");
        } else if (option.equals("--pdf")) {
            pdf = value;
        } else if (option.equals("--svg")) {
            svg = value;
        } else {
            paper(value);
        }
    }

    private void paper(String value) {
        Stream.of(PaperSize.values())
                .filter(size -> size.words().equalsIgnoreCase(value))
                .findFirst()
                .ifPresentOrElse(
                        size -> paper = size,
                        () -> note(
                                value, "The paper is \"" + value + "\"; allowed are A4 and Letter. Name one of them."));
    }

    private void unknown(String option) {
        note(
                option,
                verb.name() + " has no option \"" + option + "\". "
                        + (verb.draws()
                                ? "Its options are --pdf FILE, --svg FILE, --paper A4 or Letter, and --help."
                                : "The only option is --help; leave it out."));
    }

    private void checkQuestions() {
        if (questions.size() > 1) {
            note(
                    String.join(" ", questions),
                    verb.name() + " reads one file and was given " + questions.size()
                            + ". Name one file, or none to read standard input.");
        }
    }

    private void note(String value, String message) {
        problems.add(new Problem("", value, message));
    }
}
