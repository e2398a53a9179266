package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoShop;
import afterlength.start.document.Reply;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopUnusable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;

/**
 * The main job on the demonstration shop: fills an empty shop, writes the papers of its viola, opens it in the browser. A folder
 * that already holds a shop is never filled.
 */
final class DemoCommand implements Command {
    @Override
    public String summary() {
        return "the main job on a demonstration shop; --papers DIR, --no-browser, --shop FOLDER, --port NUMBER";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        Options options = Options.read(arguments, Set.of("--papers", "--shop", "--port"), Set.of("--no-browser"));
        int port = options.port(OpenShop.USUAL_PORT);
        if (!options.problems().isEmpty()) {
            console.answer(new Reply.Refused(options.problems()).json());
            return Exit.REFUSED;
        }
        try {
            return run(options, port, console);
        } catch (ShopUnusable | IOException | InvalidPathException unusable) {
            console.say("afterlength: the demonstration cannot be written: " + unusable.getMessage());
            return Exit.REFUSED;
        }
    }

    private static int run(Options options, int port, Console console) throws IOException {
        Path folder = options.find("--shop").map(Path::of).orElse(null);
        if (folder != null && Files.exists(folder.resolve("shop.db"))) {
            console.answer(new Reply.Refused(List.of(new Problem(
                            "",
                            folder.toString(),
                            "The folder " + folder
                                    + " holds a shop already; the demonstration fills only an empty folder. "
                                    + "Name another, or open this one with ./afterlength --shop " + folder + ".")))
                    .json());
            return Exit.REFUSED;
        }
        Path shop = folder == null ? Files.createTempDirectory("afterlength-demonstration-") : folder;
        console.say("Drawing and filling the demonstration shop in " + shop + " (a quarter of a minute) …");
        fillAndPrint(shop, Path.of(options.find("--papers").orElse("papers")), console);
        return options.has("--no-browser") ? Exit.ANSWERED : OpenShop.open(shop, port, true, console);
    }

    private static void fillAndPrint(Path shop, Path papers, Console console) throws IOException {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        DemoClock clock = new DemoClock(now, ZoneId.systemDefault());
        House house = House.of(ShopFolder.open(shop), clock);
        Visit viola = DemoShop.fill(house.demoStores(clock), now);
        for (Path paper : Papers.of(house, viola).writeTo(papers)) {
            console.say("  wrote " + paper);
        }
    }
}
