package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts a backup in the place of a shop. The database that was there is put aside, never deleted; photographs are only ever added.
 * Everything new is on the disk before the old is moved, so that a killed process leaves one of the two whole.
 */
public final class Restore {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);
    private static final List<String> DATABASE_FILES = List.of("shop.db-wal", "shop.db-shm", "shop.db");

    private final Backup backup;
    private final ShopFolder shop;

    public Restore(Backup backup, ShopFolder shop) {
        this.backup = backup;
        this.shop = shop;
    }

    /** Whether there is a shop that would have to give way. */
    public static boolean isLiving(ShopFolder shop) {
        return Files.exists(shop.database());
    }

    /**
     * What was done.
     *
     * @param aside where the former database now lies; empty when there was none
     * @param missing files of the backup that could not be brought, in words
     */
    public record Done(Optional<Path> aside, List<String> missing) {}

    /**
     * Does it; nobody else may have the shop open.
     *
     * @throws IOException when the database of the backup is not whole or the disk refuses; the shop is then as it was
     */
    public Done run(Instant now) throws IOException {
        BackupTrial.Outcome outcome = BackupTrial.run(backup, BackupTrial.Extent.ALL);
        if (!outcome.ofDatabase().isEmpty()) {
            throw new IOException(
                    "the backup is not whole: " + outcome.ofDatabase().get(0));
        }
        addFiles();
        Path incoming = shop.root().resolve("shop.db.incoming");
        DiskWrites.copy(backup.database(), incoming);
        forgetTablets(incoming);
        Optional<Path> aside = isLiving(shop) ? Optional.of(putAside(now)) : Optional.empty();
        Files.move(incoming, shop.database(), StandardCopyOption.ATOMIC_MOVE);
        DiskWrites.forceNames(shop.root());
        return new Done(aside, outcome.ofFiles());
    }

    private void addFiles() throws IOException {
        for (Map.Entry<String, Long> file : backup.sheet().files().entrySet()) {
            Path target = shop.root().resolve(file.getKey());
            Path source = backup.files().resolve(file.getKey());
            boolean wanted = !Files.exists(target) || !KeptFiles.isWhole(target);
            if (wanted && Files.exists(source) && KeptFiles.isWhole(source)) {
                DiskWrites.copy(source, target);
            }
        }
    }

    /** A log of changes left beside another database would be played into it; so the log goes first. */
    private Path putAside(Instant now) throws IOException {
        finishLog();
        Path aside = Files.createDirectories(shop.root().resolve("put-aside-" + STAMP.format(now)));
        for (String name : DATABASE_FILES) {
            Path file = shop.root().resolve(name);
            if (Files.exists(file)) {
                Files.move(file, aside.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            }
        }
        DiskWrites.forceNames(aside);
        return aside;
    }

    private void finishLog() {
        try (Connection connection = SqliteSource.of(shop.database()).getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        } catch (SQLException damaged) {
            System.getLogger(Restore.class.getName())
                    .log(
                            System.Logger.Level.WARNING,
                            "the former database is put aside as it is: {0}",
                            damaged.getMessage());
        }
    }

    /** A tablet that was shut out since must not come in again through an old copy. */
    private static void forgetTablets(Path database) throws IOException {
        try (Connection connection = SqliteSource.of(database).getConnection();
                Statement statement = connection.createStatement()) {
            if (new DatabaseFacts(connection).rows().containsKey("tablet")) {
                statement.execute("DELETE FROM tablet");
            }
            statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
            statement.execute("PRAGMA journal_mode = DELETE");
        } catch (SQLException e) {
            throw new IOException(e.getMessage(), e);
        }
    }
}
