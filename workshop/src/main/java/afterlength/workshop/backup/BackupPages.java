package afterlength.workshop.backup;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.Backup;
import afterlength.workshop.ledger.BackupKind;
import afterlength.workshop.ledger.BackupTrial;
import afterlength.workshop.ledger.Backups;
import afterlength.workshop.ledger.ShopFolder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The last backups with what their trial found, and one more at the press of a button. */
public final class BackupPages implements Room {
    private final Frames frames;
    private final ShopFolder shop;
    private final Backups backups;
    private final Clock clock;

    public BackupPages(Frames frames, ShopFolder shop, Clock clock) {
        this.frames = frames;
        this.shop = shop;
        backups = new Backups(shop);
        this.clock = clock;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/backups", context -> show(context, Typed.empty()));
        routes.post("/shelf/backups", this::make);
    }

    private void make(Context context) {
        Typed typed = Typed.from(context);
        try {
            Backup made = backups.make(BackupKind.BY_HAND, clock.instant());
            BackupTrial.run(made, BackupTrial.Extent.ofDay(LocalDate.now(clock).toEpochDay()));
            context.redirect("/shelf/backups");
        } catch (IOException refused) {
            typed.note(
                    "backup",
                    "No backup was made (" + refused.getMessage()
                            + "). The shop is as it was. See whether the disk is full or may not be written.");
            show(context, typed);
        }
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        Frame frame = frames.at(Frame.Place.SHELF, "Backups").back("/shelf", "Shelf");
        try {
            List<BackupLine> lines = new ArrayList<>();
            Instant newestSound = null;
            for (Backup backup : backups.list()) {
                lines.add(BackupLine.of(backup));
                newestSound =
                        newestSound == null && backup.sound() ? backup.sheet().madeAt() : newestSound;
            }
            Templates.show(context, new BackupPage(frame, shop.backups().toString(), lines, newestSound, typed));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
