package afterlength.workshop.ledger;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Reads from a database which tables of ours it has. The book of migrations is not ours. */
final class Tables {
    static final String BOOK_OF_MIGRATIONS = "schema_history";

    private final Connection connection;

    private Tables(Connection connection) {
        this.connection = connection;
    }

    static List<Table> of(Connection connection) throws SQLException {
        Tables reading = new Tables(connection);
        List<Table> tables = new ArrayList<>();
        for (String name : reading.names()) {
            tables.add(reading.table(name));
        }
        return tables;
    }

    private List<String> names() throws SQLException {
        return texts(
                "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> ? ORDER BY name",
                BOOK_OF_MIGRATIONS);
    }

    private Table table(String name) throws SQLException {
        List<Table.Column> columns = new ArrayList<>();
        TreeMap<Integer, String> key = new TreeMap<>();
        try (PreparedStatement query = connection.prepareStatement("SELECT * FROM pragma_table_info(?)")) {
            query.setString(1, name);
            ResultSet row = query.executeQuery();
            while (row.next()) {
                columns.add(new Table.Column(row.getString("name"), row.getString("type")));
                if (row.getInt("pk") > 0) {
                    key.put(row.getInt("pk"), row.getString("name"));
                }
            }
        }
        return new Table(name, List.copyOf(columns), references(name), List.copyOf(key.values()));
    }

    private List<Table.Reference> references(String name) throws SQLException {
        List<Table.Reference> references = new ArrayList<>();
        try (PreparedStatement query =
                connection.prepareStatement("SELECT * FROM pragma_foreign_key_list(?) ORDER BY id, seq")) {
            query.setString(1, name);
            ResultSet row = query.executeQuery();
            while (row.next()) {
                String named = row.getString("to");
                references.add(new Table.Reference(
                        row.getString("from"), row.getString("table"), named == null ? "id" : named));
            }
        }
        return List.copyOf(references);
    }

    private List<String> texts(String sql, String value) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (PreparedStatement query = connection.prepareStatement(sql)) {
            query.setString(1, value);
            ResultSet row = query.executeQuery();
            while (row.next()) {
                texts.add(row.getString(1));
            }
        }
        return texts;
    }
}
