package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.workshop.archive.ArchiveReader;
import afterlength.workshop.archive.ArchiveRefused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** Makes a shop of an archive again: {@code read-archive FILE.zip --shop FOLDER}. */
final class ReadArchiveCommand implements Command {
    static final String NAME = "read-archive";

    private static final String HELP = """
            ./afterlength read-archive FILE.zip --shop FOLDER

            Checks an archive byte by byte and makes a shop of it in FOLDER, which has to be empty or not there yet. An archive that is
            damaged, changed, newer than this program or not made by it is refused with the reason, and nothing of it is kept.

            Exit code 0: read. 2: refused, the reason is in the answer. 1: our own fault.
            """;

    @Override
    public String summary() {
        return "makes a shop of an archive again; read-archive FILE.zip --shop FOLDER";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        if (arguments.contains("--help") || arguments.contains("-h")) {
            console.answer(HELP);
            return Exit.ANSWERED;
        }
        if (arguments.isEmpty() || arguments.get(0).startsWith("-")) {
            return refuse("", "Name the archive first: ./afterlength read-archive FILE.zip --shop FOLDER.", console);
        }
        Options options = Options.read(arguments.subList(1, arguments.size()), Set.of("--shop"), Set.of());
        if (!options.problems().isEmpty()) {
            return ArchiveCommand.refuse(options.problems(), console);
        }
        return options.find("--shop")
                .map(shop -> read(arguments.get(0), shop, console))
                .orElseGet(() -> refuse("", "Name the folder of the new shop: --shop FOLDER.", console));
    }

    private static int read(String archive, String shop, Console console) {
        try {
            Path file = Path.of(archive);
            if (!Files.isRegularFile(file)) {
                return refuse(archive, "The file \"" + archive + "\" is not there. Check its name.", console);
            }
            ArchiveReader.read(file, Path.of(shop), new ToldProgress(console));
            console.say("The shop is in " + shop + ". Open it with ./afterlength --shop " + shop);
            return Exit.ANSWERED;
        } catch (ArchiveRefused refused) {
            return refuse(archive, refused.getMessage() + " Nothing was kept of it.", console);
        } catch (IOException | InvalidPathException broken) {
            return refuse(
                    archive,
                    "The archive cannot be read (" + broken.getMessage() + "). Nothing was kept of it.",
                    console);
        }
    }

    private static int refuse(String value, String message, Console console) {
        return ArchiveCommand.refuse(List.of(new Problem("", value, message)), console);
    }
}
