package afterlength.workshop.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * A database filled from rows that another shop wrote, made as a program of the same version would have made it and brought up to
 * date afterwards like any other shop. Kept in one transaction; checked for broken references before it counts.
 */
public final class FreshShop implements AutoCloseable {
    private final Connection connection;
    private final Rows rows;

    private FreshShop(Connection connection) throws SQLException {
        this.connection = connection;
        rows = new Rows(connection);
    }

    /** The newest version of a database that this program knows. */
    public static int newestVersion() {
        return Migrations.NEWEST;
    }

    /** Makes the database in a folder that has none. */
    public static FreshShop make(Path database, int version) throws IOException {
        try {
            var source = SqliteSource.of(database);
            Migrations.make(source, version);
            Connection connection = source.getConnection();
            try (Statement statement = connection.createStatement()) {
                statement.execute("PRAGMA foreign_keys = OFF");
            }
            connection.setAutoCommit(false);
            return new FreshShop(connection);
        } catch (SQLException broken) {
            throw new IOException(broken.getMessage(), broken);
        }
    }

    public List<String> tables() {
        return rows.tables();
    }

    /**
     * Takes the rows of one table.
     *
     * @throws UnfittingRows when they are not of this table, or break one of its rules
     */
    public long take(String table, InputStream in) throws IOException {
        try {
            return rows.read(table, in);
        } catch (SQLException broken) {
            throw new UnfittingRows(table, "the database refuses one: " + broken.getMessage());
        }
    }

    /**
     * Keeps what was taken.
     *
     * @throws UnfittingRows when a row names another one that did not come along
     */
    public void keep() throws IOException {
        try (Statement statement = connection.createStatement();
                ResultSet broken = statement.executeQuery("PRAGMA foreign_key_check")) {
            if (broken.next()) {
                throw new UnfittingRows(
                        broken.getString("table"),
                        "one names a row of “" + broken.getString("parent") + "” that is not there");
            }
            connection.commit();
        } catch (SQLException wrong) {
            throw new IOException(wrong.getMessage(), wrong);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            connection.close();
        } catch (SQLException wrong) {
            throw new IOException(wrong.getMessage(), wrong);
        }
    }
}
