package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.Reply;
import afterlength.workshop.ledger.Backup;
import afterlength.workshop.ledger.Restore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopLock;
import afterlength.workshop.ledger.ShopUnusable;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Puts a backup in the place of a shop. Where a shop lives already, it says so and does nothing unless {@code --put-living-shop-aside}
 * is typed; even then the former database is kept.
 */
final class RestoreCommand implements Command {
    static final String NAME = "restore";
    private static final String ASIDE = "--put-living-shop-aside";

    private final Clock clock;

    RestoreCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public String summary() {
        return "puts a backup in place of a shop; --from BACKUP, --shop FOLDER, " + ASIDE;
    }

    @Override
    public int run(List<String> arguments, Console console) {
        Options options = Options.read(arguments, Set.of("--from", "--shop"), Set.of(ASIDE));
        if (!options.problems().isEmpty()) {
            console.answer(new Reply.Refused(options.problems()).json());
            return Exit.REFUSED;
        }
        Reply reply = options.find("--from")
                .map(from -> reply(from, options, console))
                .orElseGet(() -> refused("--from", "Which backup? Name its folder with --from BACKUP."));
        console.answer(reply.json());
        return reply instanceof Reply.Answered ? Exit.ANSWERED : Exit.REFUSED;
    }

    private Reply reply(String from, Options options, Console console) {
        try {
            Backup backup = Backup.open(Path.of(from));
            ShopFolder shop = ShopFolder.open(OpenShop.folder(options));
            if (Restore.isLiving(shop) && !options.has(ASIDE)) {
                return living(shop, backup);
            }
            return restore(backup, shop, console);
        } catch (IOException | ShopUnusable | InvalidPathException unusable) {
            return refused(
                    from,
                    "Nothing was restored: " + unusable.getMessage()
                            + ". The shop is as it was; look at --from and --shop.");
        }
    }

    private static Reply living(ShopFolder shop, Backup backup) {
        return refused(
                shop.root().toString(),
                "A shop lives in " + shop.root() + ". Restoring the backup of "
                        + backup.sheet().madeAt()
                        + " would put its database aside, with everything written since. Type " + ASIDE
                        + " as well if that is meant, or name an empty folder with --shop.");
    }

    private Reply restore(Backup backup, ShopFolder shop, Console console) throws IOException {
        Optional<ShopLock> lock = ShopLock.take(shop);
        if (lock.isEmpty()) {
            return refused(
                    shop.root().toString(),
                    "The shop in " + shop.root() + " is open. End the program that has it open, then restore.");
        }
        try {
            console.say("Trying the backup and reading every file …");
            return told(shop, new Restore(backup, shop).run(clock.instant()));
        } finally {
            lock.get().close();
        }
    }

    private static Reply told(ShopFolder shop, Restore.Done done) {
        AnswerDocument answer = new AnswerDocument().put("restored", shop.root().toString());
        done.aside().ifPresent(aside -> answer.put("former_database", aside.toString()));
        return new Reply.Answered(answer.putTexts("missing", done.missing()));
    }

    private static Reply refused(String value, String message) {
        return new Reply.Refused(List.of(new Problem("", value, message)));
    }
}
