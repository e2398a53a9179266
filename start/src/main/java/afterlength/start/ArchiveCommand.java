package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.Reply;
import afterlength.workshop.archive.ArchiveMaker;
import afterlength.workshop.archive.ArchiveWish;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Writes a shop, or what belongs to one instrument or one owner, as one archive: {@code archive --shop FOLDER --to FILE.zip}. */
final class ArchiveCommand implements Command {
    static final String NAME = "archive";

    private static final String HELP = """
            ./afterlength archive [--shop FOLDER] [--to FILE.zip] [--instrument N | --owner N] [--without-people]

            Writes the whole shop, or what belongs to one instrument or one owner, as one ZIP of open formats: a bag with check sums
            (BagIt), papers as PDF, photographs, measures as CSV, records as JSON-LD, and the rows of every table. Work may go on
            meanwhile. ./afterlength read-archive makes a shop of it again.

            --shop FOLDER       the shop; as a rule the one in your home folder
            --to FILE.zip       where to write it; a file of that name is replaced
            --instrument N      only instrument N (the number in the address of its page), with its owner's data; photographs go without
                                the camera's notes of place and people
            --owner N           everything kept about owner N, for that person
            --without-people    with --instrument: what tells of owners is erased from the copy first

            Exit code 0: written. 2: refused, the reason is in the answer. 1: our own fault.
            """;

    @Override
    public String summary() {
        return "the shop as one archive; --shop FOLDER, --to FILE.zip, --instrument N, --owner N, --without-people";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        if (arguments.contains("--help") || arguments.contains("-h")) {
            console.answer(HELP);
            return Exit.ANSWERED;
        }
        Options options = Options.read(
                arguments, Set.of("--shop", "--to", "--instrument", "--owner"), Set.of("--without-people"));
        List<Problem> problems = new ArrayList<>(options.problems());
        ArchiveWish wish = wish(options, problems);
        Path shop = OpenShop.folder(options);
        if (!Files.exists(shop.resolve("shop.db"))) {
            problems.add(new Problem(
                    "",
                    shop.toString(),
                    "There is no shop in the folder " + shop + ". Name its folder with --shop FOLDER."));
        }
        options.find("--to").ifPresent(file -> checkPlace(file, problems));
        return problems.isEmpty() ? write(options, shop, wish, console) : refuse(problems, console);
    }

    private static void checkPlace(String file, List<Problem> problems) {
        try {
            Path folder = Path.of(file).toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                problems.add(new Problem(
                        "",
                        file,
                        "There is no folder for \"" + file
                                + "\". Make it first, or name another place with --to FILE.zip."));
            }
        } catch (InvalidPathException wrong) {
            problems.add(new Problem(
                    "", file, "\"" + file + "\" cannot be the name of a file. Name another with --to FILE.zip."));
        }
    }

    private static ArchiveWish wish(Options options, List<Problem> problems) {
        boolean without = options.has("--without-people");
        String instrument = options.find("--instrument").orElse("");
        String owner = options.find("--owner").orElse("");
        if (!instrument.isEmpty() && !owner.isEmpty()) {
            problems.add(new Problem("", owner, "Name an instrument or an owner, not both."));
        }
        if (without && instrument.isEmpty()) {
            problems.add(new Problem(
                    "",
                    "--without-people",
                    "--without-people goes with --instrument N; the other archives are about people."));
        }
        if (!instrument.isEmpty()) {
            return ArchiveWish.instrument(number(instrument, "instrument", problems), without);
        }
        return owner.isEmpty() ? ArchiveWish.wholeShop() : ArchiveWish.owner(number(owner, "owner", problems));
    }

    private static long number(String text, String what, List<Problem> problems) {
        if (!text.matches("[1-9]\\d{0,17}")) {
            problems.add(new Problem(
                    "",
                    text,
                    "The " + what + " is \"" + text + "\"; give the number in the address of its page, such as 3."));
            return 0;
        }
        return Long.parseLong(text);
    }

    private static int write(Options options, Path shop, ArchiveWish wish, Console console) {
        try {
            ArchiveMaker maker = House.of(ShopFolder.open(shop), Clock.system(ZoneId.systemDefault()))
                    .archiveMaker();
            Path file = Path.of(options.find("--to").orElse(maker.fileName(wish)));
            maker.write(wish, file, new ToldProgress(console));
            console.say(
                    "Wrote " + file + " (" + Files.size(file) / 1000 + " kB). Keep a second copy in another house.");
            return Exit.ANSWERED;
        } catch (ShopUnusable | NotHere | IOException | InvalidPathException failed) {
            return refuse(
                    List.of(
                            new Problem(
                                    "",
                                    options.find("--to").orElse(""),
                                    "The archive cannot be written: " + failed.getMessage()
                                            + " Nothing was changed; see whether the disk has room, or name another place with --to FILE.zip.")),
                    console);
        }
    }

    static int refuse(List<Problem> problems, Console console) {
        console.answer(new Reply.Refused(problems).json());
        return Exit.REFUSED;
    }
}
