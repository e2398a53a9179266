package afterlength.workshop.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.NoSuchElementException;

/** All rows of a shop, table by table, as files; and back. Which tables there are the database says itself. */
public final class Rows {
    private final Connection connection;
    private final List<Table> tables;

    Rows(Connection connection) throws SQLException {
        this.connection = connection;
        tables = Tables.of(connection);
    }

    public List<String> tables() {
        return tables.stream().map(Table::name).toList();
    }

    public long write(String table, OutputStream out) throws SQLException, IOException {
        return new TableFile(get(table), connection).write(out);
    }

    public long read(String table, InputStream in) throws SQLException, IOException {
        return new TableFile(get(table), connection).read(in);
    }

    /** How many rows a table holds. */
    public long count(String table) throws SQLException {
        try (Statement query = connection.createStatement();
                ResultSet row = query.executeQuery(
                        "SELECT count(*) FROM " + Table.quoted(get(table).name()))) {
            row.next();
            return row.getLong(1);
        }
    }

    private Table get(String name) {
        return tables.stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("no table " + name));
    }
}
