package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.api.FlywayException;

/**
 * Tries a backup by restoring its database into a scratch folder: SQLite's own check, the rows counted again, the step to this
 * program's version rehearsed, every file a row names there and of its size, and the bytes of files read against their names.
 */
public final class BackupTrial {
    private final Backup backup;
    private final Extent extent;
    private final List<String> faults = new ArrayList<>();
    private final Set<String> named = new TreeSet<>();
    private int read;

    /** Whose bytes are read: all files, or the share of them that is due on a day, so that each is read once in four weeks. */
    public record Extent(int day, int of) {
        public static final Extent ALL = new Extent(0, 1);

        /** One twenty-eighth, another one each day. */
        public static Extent ofDay(long day) {
            return new Extent(Math.floorMod(day, 28), 28);
        }

        boolean covers(String name) {
            return Integer.parseInt(name.substring(0, 4), 16) % of == day;
        }
    }

    /** What was found wrong, with the database and with files; a lost file does not make the database worth less. */
    public record Outcome(List<String> ofDatabase, List<String> ofFiles) {
        public Outcome {
            ofDatabase = List.copyOf(ofDatabase);
            ofFiles = List.copyOf(ofFiles);
        }

        public boolean whole() {
            return ofDatabase.isEmpty() && ofFiles.isEmpty();
        }

        /** All in one list, the database first. */
        public List<String> faults() {
            return Stream.concat(ofDatabase.stream(), ofFiles.stream()).toList();
        }
    }

    private BackupTrial(Backup backup, Extent extent) {
        this.backup = backup;
        this.extent = extent;
    }

    /** Tries the backup, notes the outcome beside it, and answers every fault found. */
    public static Outcome run(Backup backup, Extent extent) throws IOException {
        BackupTrial trial = new BackupTrial(backup, extent);
        trial.tryDatabase();
        List<String> ofDatabase = List.copyOf(trial.faults);
        trial.tryFiles();
        int all = backup.sheet().files().size();
        backup.keepTrial(trial.faults, trial.read + " of " + all + " files read through");
        return new Outcome(ofDatabase, trial.faults.subList(ofDatabase.size(), trial.faults.size()));
    }

    private void tryDatabase() throws IOException {
        Path scratch = Files.createTempDirectory(backup.folder().getParent(), ".trial-");
        try {
            Path copy = scratch.resolve(Backup.DATABASE);
            Files.copy(backup.database(), copy);
            if (!KeptFiles.sha256(copy).equals(backup.sheet().databaseSha256())) {
                faults.add("the database is not the one that was written: its fingerprint differs");
            }
            DataSource source = SqliteSource.of(copy);
            look(source);
            rehearse(source);
        } catch (SQLException | FlywayException e) {
            faults.add("the database cannot be opened (" + e.getMessage() + ")");
        } finally {
            DiskWrites.removeFolder(scratch);
        }
    }

    private void look(DataSource source) throws SQLException {
        try (Connection connection = source.getConnection()) {
            DatabaseFacts facts = new DatabaseFacts(connection);
            faults.addAll(facts.faults());
            compare(facts.rows());
            named.addAll(facts.fileNames());
        }
    }

    private void compare(Map<String, Long> found) {
        if (!found.equals(backup.sheet().rows())) {
            faults.add("the rows are not those that were counted: " + found + " in place of "
                    + backup.sheet().rows());
        }
    }

    private void rehearse(DataSource source) throws SQLException {
        if (backup.sheet().version() < Migrations.NEWEST) {
            Migrations.migrate(source);
            try (Connection connection = source.getConnection()) {
                faults.addAll(new DatabaseFacts(connection).faults());
            }
        }
    }

    private void tryFiles() throws IOException {
        Map<String, Long> listed = backup.sheet().files();
        named.stream()
                .filter(name -> !listed.containsKey("photographs/" + name) && !listed.containsKey("loggers/" + name))
                .forEach(name -> faults.add("a row names the file " + name + ", which was not there to be backed up"));
        for (Map.Entry<String, Long> file : backup.sheet().files().entrySet()) {
            Path path = backup.files().resolve(file.getKey());
            if (!Files.isRegularFile(path)) {
                faults.add("the file " + file.getKey() + " is not there");
            } else if (Files.size(path) != file.getValue()) {
                faults.add("the file " + file.getKey() + " has " + Files.size(path) + " bytes in place of "
                        + file.getValue());
            } else if (extent.covers(path.getFileName().toString())) {
                readThrough(path, file.getKey());
            }
        }
    }

    private void readThrough(Path path, String place) throws IOException {
        read++;
        if (!KeptFiles.isWhole(path)) {
            faults.add("the file " + place + " is no longer what its name says: it was altered or the disk is failing");
        }
    }
}
