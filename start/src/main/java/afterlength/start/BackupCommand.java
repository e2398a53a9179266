package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.Reply;
import afterlength.workshop.ledger.Backup;
import afterlength.workshop.ledger.BackupKind;
import afterlength.workshop.ledger.BackupTrial;
import afterlength.workshop.ledger.Backups;
import afterlength.workshop.ledger.Restore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopUnusable;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Keeps a backup and tries it, also while the shop is open: {@code backup --to /media/disk/shop-copy}. */
final class BackupCommand implements Command {
    static final String NAME = "backup";

    private final Clock clock;

    BackupCommand(Clock clock) {
        this.clock = clock;
    }

    @Override
    public String summary() {
        return "keeps a backup and tries it; --to FOLDER (photographs too), --shop FOLDER";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        Options options = Options.read(arguments, Set.of("--to", "--shop"), Set.of());
        if (!options.problems().isEmpty()) {
            return refused(options.problems(), console);
        }
        try {
            ShopFolder shop =
                    new ShopFolder(OpenShop.folder(options).toAbsolutePath().normalize());
            return Restore.isLiving(shop) ? keep(shop, options.find("--to"), console) : noShop(shop, console);
        } catch (IOException | ShopUnusable | InvalidPathException refused) {
            return refused(
                    List.of(new Problem(
                            "",
                            options.find("--to").orElse(""),
                            "No backup was made: " + refused.getMessage()
                                    + ". The shop is as it was. See whether the disk is full or may not be written.")),
                    console);
        }
    }

    private int keep(ShopFolder shop, Optional<String> to, Console console) throws IOException {
        Backups backups = new Backups(shop);
        console.say("Copying the shop in " + shop.root() + " …");
        Backup backup = to.isPresent()
                ? backups.makeIn(Path.of(to.get()), BackupKind.BY_HAND, clock.instant())
                : backups.make(BackupKind.BY_HAND, clock.instant());
        console.say("Trying the copy by restoring it and reading every file …");
        List<String> faults = BackupTrial.run(backup, BackupTrial.Extent.ALL).faults();
        console.answer(BackupReply.made(backup, faults).json());
        return faults.isEmpty() ? Exit.ANSWERED : Exit.REFUSED;
    }

    private static int noShop(ShopFolder shop, Console console) {
        return refused(
                List.of(new Problem(
                        "",
                        shop.root().toString(),
                        "There is no shop in " + shop.root() + ". Name its folder with --shop FOLDER.")),
                console);
    }

    private static int refused(List<Problem> problems, Console console) {
        console.answer(new Reply.Refused(problems).json());
        return Exit.REFUSED;
    }
}
