package afterlength.start;

import afterlength.start.document.Reply;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopUnusable;
import afterlength.workshop.setup.BenchWarmUp;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
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
            House house = House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
            BenchWarmUp.begin();
            return new OpenDoor(house.openDesk(port), browser, console).standOpen();
        } catch (ShopUnusable unusable) {
            console.say("afterlength: " + unusable.getMessage());
            return Exit.REFUSED;
        }
    }
}
