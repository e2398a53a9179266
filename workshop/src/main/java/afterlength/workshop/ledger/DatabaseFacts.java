package afterlength.workshop.ledger;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What can be asked of any database of ours without knowing what its tables mean. */
final class DatabaseFacts {
    private final Connection connection;

    DatabaseFacts(Connection connection) {
        this.connection = connection;
    }

    int version() throws SQLException {
        return Integer.parseInt(texts("PRAGMA user_version").get(0));
    }

    Map<String, Long> rows() throws SQLException {
        Map<String, Long> rows = new TreeMap<>();
        for (String table : tables()) {
            rows.put(
                    table,
                    Long.valueOf(texts("SELECT count(*) FROM \"" + table + "\"").get(0)));
        }
        return rows;
    }

    /** What SQLite itself finds wrong, in its words; empty for a sound database. */
    List<String> faults() throws SQLException {
        List<String> faults = new ArrayList<>(texts("PRAGMA integrity_check"));
        faults.remove("ok");
        texts("PRAGMA foreign_key_check")
                .forEach(table -> faults.add("a row of " + table + " names one that is not there"));
        return faults;
    }

    /** Every fingerprint that a row names, whatever its table. */
    Set<String> fileNames() throws SQLException {
        Set<String> names = new TreeSet<>();
        for (String table : tables()) {
            if (texts("SELECT name FROM pragma_table_info('" + table + "')").contains("sha256")) {
                names.addAll(texts("SELECT DISTINCT sha256 FROM \"" + table + "\""));
            }
        }
        return names;
    }

    private List<String> tables() throws SQLException {
        return texts("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name");
    }

    private List<String> texts(String question) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(question)) {
            while (row.next()) {
                texts.add(row.getString(1));
            }
        }
        return texts;
    }
}
