package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.sqlite.SQLiteConnection;

/**
 * Makes and finds backups of one shop. Database and row counts are taken in one reading of the database, so that a copy made while
 * people work is still of one moment. A backup is written beside its place and moved there whole.
 */
public final class Backups {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);
    private static final Duration ABANDONED_AFTER = Duration.ofHours(6);
    private static final String UNFINISHED = ".unfinished-";

    private final ShopFolder shop;

    public Backups(ShopFolder shop) {
        this.shop = shop;
    }

    /** Keeps the database in the shop's own {@code backups/}; the photographs lie beside it anyway. */
    public Backup make(BackupKind kind, Instant now) throws IOException {
        return make(kind, now, shop.backups(), kind.start());
    }

    /** Before the database is brought to a newer version; the name tells which. */
    Backup makeBefore(int version, Instant now) throws IOException {
        return make(
                BackupKind.BEFORE_MIGRATION, now, shop.backups(), BackupKind.BEFORE_MIGRATION.start() + "-" + version);
    }

    /** Keeps everything in another place, such as a second disk; files that are there already are not copied again. */
    public Backup makeIn(Path place, BackupKind kind, Instant now) throws IOException {
        refuseInside(place);
        Files.createDirectories(place.resolve("backups"));
        Backup backup = make(kind, now, place.resolve("backups"), kind.start());
        copyFiles(backup.sheet().files(), shop.root(), place);
        return backup;
    }

    /** Whole backups, the newest first; a folder that is none of ours, or broke off, is passed over. */
    public List<Backup> list() throws IOException {
        return listIn(shop.backups());
    }

    static List<Backup> listIn(Path folder) throws IOException {
        List<Backup> backups = new ArrayList<>();
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder, path -> !isHidden(path))) {
            for (Path each : inside) {
                if (Files.isRegularFile(each.resolve(BackupSheet.NAME))) {
                    openIfWhole(each, backups);
                }
            }
        }
        backups.sort(Comparator.comparing((Backup backup) -> backup.sheet().madeAt())
                .thenComparing(Backup::folder)
                .reversed());
        return backups;
    }

    private static void openIfWhole(Path folder, List<Backup> backups) {
        try {
            backups.add(Backup.open(folder));
        } catch (IOException brokeOff) {
            System.getLogger(Backups.class.getName())
                    .log(System.Logger.Level.WARNING, "no whole backup in {0}: {1}", folder, brokeOff.getMessage());
        }
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    private void refuseInside(Path place) throws IOException {
        if (place.toAbsolutePath().normalize().startsWith(shop.root())) {
            throw new IOException(
                    "the place lies inside the shop's own folder; name one outside, best on another disk");
        }
    }

    private Backup make(BackupKind kind, Instant now, Path folder, String start) throws IOException {
        Files.createDirectories(folder);
        removeAbandoned(folder);
        Path unfinished = Files.createTempDirectory(folder, UNFINISHED);
        try {
            BackupSheet sheet = copyDatabase(unfinished.resolve(Backup.DATABASE), kind, now);
            DiskWrites.text(unfinished.resolve(BackupSheet.NAME), sheet.text());
            Path place = moveToFree(unfinished, folder.resolve(start + "-" + STAMP.format(now)));
            DiskWrites.forceNames(folder);
            return new Backup(place, sheet);
        } catch (SQLException e) {
            throw new IOException(e.getMessage(), e);
        } finally {
            DiskWrites.removeFolder(unfinished);
        }
    }

    /** What a killed process left: hours old, so that nobody else's backup or trial in the making is meant. */
    private static void removeAbandoned(Path folder) throws IOException {
        Instant longAgo = Instant.now().minus(ABANDONED_AFTER);
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".{unfinished,trial}-*")) {
            for (Path each : left) {
                if (Files.getLastModifiedTime(each).toInstant().isBefore(longAgo)) {
                    DiskWrites.removeFolder(each);
                }
            }
        }
    }

    private BackupSheet copyDatabase(Path target, BackupKind kind, Instant now) throws SQLException, IOException {
        try (Connection connection = SqliteSource.of(shop.database()).getConnection()) {
            connection.createStatement().execute("BEGIN DEFERRED");
            DatabaseFacts facts = new DatabaseFacts(connection);
            int version = facts.version();
            Map<String, Long> rows = facts.rows();
            int answer =
                    connection.unwrap(SQLiteConnection.class).getDatabase().backup("main", target.toString(), null);
            connection.createStatement().execute("COMMIT");
            if (answer != 0) {
                throw new IOException("the database could not be copied (SQLite says " + answer + ")");
            }
            DiskWrites.force(target);
            Instant moment = now.truncatedTo(ChronoUnit.SECONDS);
            return new BackupSheet(moment, kind, version, KeptFiles.sha256(target), rows, KeptFiles.list(shop.root()));
        }
    }

    private static void copyFiles(Map<String, Long> files, Path from, Path to) throws IOException {
        for (Map.Entry<String, Long> file : files.entrySet()) {
            Path target = to.resolve(file.getKey());
            if (!Files.exists(target) || Files.size(target) != file.getValue()) {
                Files.createDirectories(target.getParent());
                DiskWrites.copy(from.resolve(file.getKey()), target);
            }
        }
    }

    /** Two backups of the same second get two names. */
    private static synchronized Path moveToFree(Path unfinished, Path wanted) throws IOException {
        Path place = wanted;
        for (int n = 2; Files.exists(place); n++) {
            place = wanted.resolveSibling(wanted.getFileName() + "-" + n);
        }
        return Files.move(unfinished, place, StandardCopyOption.ATOMIC_MOVE);
    }
}
