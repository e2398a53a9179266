package afterlength.start;

import afterlength.start.document.Reply;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.DailyBackup;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopLock;
import afterlength.workshop.ledger.ShopUnusable;
import afterlength.workshop.setup.BenchWarmUp;
import io.javalin.util.JavalinBindException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Opens the person's own shop. */
final class OpenShop implements Command {
    static final int USUAL_PORT = 4170;

    @Override
    public String summary() {
        return "opens the shop in the browser; --shop FOLDER, --port NUMBER, --no-browser";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        Options options = Options.read(arguments, Set.of("--shop", "--port"), Set.of("--no-browser"));
        int port = options.port(USUAL_PORT);
        if (!options.problems().isEmpty()) {
            console.answer(new Reply.Refused(options.problems()).json());
            return Exit.REFUSED;
        }
        return open(folder(options), port, !options.has("--no-browser"), console);
    }

    /** The folder that was named, or the one in the person's home. */
    static Path folder(Options options) {
        return options.find("--shop")
                .map(Path::of)
                .orElse(Path.of(System.getProperty("user.home"), "afterlength-shop"));
    }

    /** Opens a shop and keeps it open until the program is ended. */
    static int open(Path folder, int port, boolean browser, Console console) {
        try {
            return open(ShopFolder.open(folder), port, browser, console);
        } catch (ShopUnusable unusable) {
            console.say("afterlength: " + unusable.getMessage());
            return Exit.REFUSED;
        } catch (JavalinBindException taken) {
            console.say("afterlength: The port " + port
                    + " is taken by another program. Name another with --port NUMBER, or 0 for any free one.");
            return Exit.REFUSED;
        }
    }

    private static int open(ShopFolder folder, int port, boolean browser, Console console) {
        Optional<ShopLock> lock = ShopLock.take(folder);
        if (lock.isEmpty()) {
            console.say("afterlength: The shop in " + folder.root()
                    + " is open already. Go on in its browser window, or end that program first.");
            return Exit.REFUSED;
        }
        try {
            Clock clock = Clock.system(ZoneId.systemDefault());
            folder.sweep();
            House house = House.of(folder, clock);
            BenchWarmUp.begin();
            return standOpen(house.openDesk(port), DailyBackup.begin(folder, clock), browser, console);
        } finally {
            lock.get().close();
        }
    }

    private static int standOpen(Desk desk, DailyBackup daily, boolean browser, Console console) {
        try {
            return new OpenDoor(desk, browser, console).standOpen();
        } finally {
            daily.close();
        }
    }
}
