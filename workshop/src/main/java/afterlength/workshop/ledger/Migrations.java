package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/**
 * Brings a database to the version this program knows. The version is also kept in {@code PRAGMA user_version}, which is read
 * in a millisecond; Flyway, which needs near half a second, is asked only when the two differ. A shop that holds work is
 * copied into {@code backups/} first.
 */
final class Migrations {
    /** The newest file in the migrations folder; a test keeps the two together. */
    static final int NEWEST = 8;

    private static final String WHERE = "classpath:afterlength/workshop/ledger/migrations";
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

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

    private static void migrate(DataSource source, ShopFolder folder, int found) throws SQLException, IOException {
        if (found > 0) {
            copy(
                    source,
                    folder.backups().resolve("before-version-" + NEWEST + "-" + STAMP.format(Instant.now()) + ".db"));
        }
        Flyway.configure()
                .dataSource(source)
                .locations(WHERE)
                .table("schema_history")
                .load()
                .migrate();
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA user_version = " + NEWEST);
        }
    }

    private static void copy(DataSource source, Path target) throws SQLException, IOException {
        Files.createDirectories(target.getParent());
        try (Connection connection = source.getConnection();
                var statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, target.toString());
            statement.execute();
        }
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
