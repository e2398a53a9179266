package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.sight.card.Card;
import afterlength.start.document.Reply;
import afterlength.workshop.examination.CardSheet;
import afterlength.workshop.paper.PaperSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Writes a measuring card as PDF, true to size: {@code card --card body --paper a4 --number 1 --to card.pdf}. */
final class CardCommand implements Command {
    static final String NAME = "card";

    @Override
    public String summary() {
        return "a measuring card to print; --card body|pocket, --paper a4|letter, --number N, --to FILE";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        Options options = Options.read(arguments, Set.of("--card", "--paper", "--number", "--to"), Set.of());
        String card = options.find("--card").orElse("body");
        String paper = options.find("--paper").orElse("a4").toLowerCase(Locale.ROOT);
        String number = options.find("--number").orElse("1");
        List<Problem> problems = new ArrayList<>(options.problems());
        check(card, Set.of("body", "pocket"), "card", "body or pocket", problems);
        check(paper, Set.of("a4", "letter"), "paper", "a4 or letter", problems);
        if (!number.matches("[1-9]\\d{0,3}")) {
            problems.add(
                    new Problem("", number, "The number is \"" + number + "\"; give a whole number from 1 to 9999."));
        }
        if (!problems.isEmpty()) {
            console.answer(new Reply.Refused(problems).json());
            return Exit.REFUSED;
        }
        String file = options.find("--to").orElse(card + "-card-" + number + "-" + paper + ".pdf");
        return write(
                pdf(card, PaperSize.valueOf(paper.toUpperCase(Locale.ROOT)), Integer.parseInt(number)), file, console);
    }

    private static void check(String given, Set<String> known, String what, String permitted, List<Problem> problems) {
        if (!known.contains(given)) {
            problems.add(new Problem("", given, "The " + what + " is \"" + given + "\"; give " + permitted + "."));
        }
    }

    private static byte[] pdf(String word, PaperSize size, int number) {
        Card card = word.equals(Card.POCKET.word()) ? Card.POCKET : CardSheet.body(size);
        return CardSheet.pdf(card, size, number, "Afterlength " + Version.get());
    }

    private static int write(byte[] pdf, String file, Console console) {
        try {
            Files.write(Path.of(file), pdf);
            console.say("Wrote " + file + ". Print it at 100 % and measure both check lines.");
            return Exit.ANSWERED;
        } catch (IOException | InvalidPathException broken) {
            console.answer(new Reply.Refused(List.of(new Problem(
                            "", file, "The file \"" + file + "\" cannot be written. Name another place with --to.")))
                    .json());
            return Exit.REFUSED;
        }
    }
}
