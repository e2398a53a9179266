package afterlength.workshop.ledger;

import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/**
 * Brings a database to the version this program knows. The version is also kept in {@code PRAGMA user_version}, which is read
 * in a millisecond; Flyway, which needs near half a second, is asked only when the two differ. A shop that holds work is
 * backed up first, and the backup tried.
 */
final class Migrations {
    /** The newest file in the migrations folder; a test keeps the two together. */
    static final int NEWEST = 15;

    private static final String WHERE = "classpath:afterlength/workshop/ledger/migrations";

    private Migrations() {}

    static void bringUpToDate(DataSource source, ShopFolder folder) {
        try {
            int found = version(source);
            if (found > NEWEST) {
                throw new ShopUnusable(
                        "The shop in " + folder.root()
                                + " was last used by a newer version of this program (its database is version " + found
                                + ", this program knows up to " + NEWEST
                                + "). Use the newer version; nothing was changed.",
                        new IllegalStateException("database version " + found));
            }
            if (found < NEWEST) {
                migrate(source, folder, found);
            }
        } catch (SQLException | IOException | FlywayException e) {
            throw new ShopUnusable(
                    "The database " + folder.database() + " cannot be opened (" + e.getMessage()
                            + "). If it is damaged, put a copy from " + folder.backups()
                            + " in its place; nothing was changed.",
                    e);
        }
    }

    /** Makes an empty database as a program of that version would have made it. */
    static void make(DataSource source, int version) throws SQLException {
        Flyway.configure()
                .dataSource(source)
                .locations(WHERE)
                .table(Tables.BOOK_OF_MIGRATIONS)
                .target(Integer.toString(version))
                .load()
                .migrate();
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA user_version = " + version);
        }
    }

    /** A shop that holds work is copied first, and the step is rehearsed on the copy: what fails there does not touch the shop. */
    private static void migrate(DataSource source, ShopFolder folder, int found) throws SQLException, IOException {
        if (found > 0) {
            Backup before = new Backups(folder).makeBefore(NEWEST, Instant.now());
            List<String> faults =
                    BackupTrial.run(before, BackupTrial.Extent.ofDay(0)).ofDatabase();
            if (!faults.isEmpty()) {
                throw new IOException(
                        "the copy made before the step to version " + NEWEST + " is not whole: " + faults.get(0));
            }
        }
        migrate(source);
    }

    static void migrate(DataSource source) throws SQLException {
        make(source, NEWEST);
    }

    private static int version(DataSource source) throws SQLException {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA user_version")) {
            row.next();
            return row.getInt(1);
        }
    }
}
