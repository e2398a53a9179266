package afterlength.workshop.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All that a shop keeps, read by plain SQL and plain files, to lay two shops beside each other. */
public final class WholeShop {
    private WholeShop() {}

    /** Every value with its storage class, by table and row. */
    public static Map<String, List<String>> rows(Path root) throws SQLException {
        Map<String, List<String>> rows = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + root.resolve("shop.db"));
                Statement statement = connection.createStatement()) {
            List<String> tables = new ArrayList<>();
            ResultSet names = statement.executeQuery(
                    "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name <> 'schema_history'");
            while (names.next()) {
                tables.add(names.getString(1));
            }
            for (String table : tables) {
                rows.put(table, rows(statement, table));
            }
        }
        return rows;
    }

    private static List<String> rows(Statement statement, String table) throws SQLException {
        List<String> rows = new ArrayList<>();
        ResultSet row = statement.executeQuery("SELECT * FROM " + table);
        int columns = row.getMetaData().getColumnCount();
        while (row.next()) {
            StringBuilder text = new StringBuilder();
            for (int at = 1; at <= columns; at++) {
                Object value = row.getObject(at);
                text.append(value == null ? "nothing" : value.getClass().getSimpleName() + " " + value)
                        .append(" | ");
            }
            rows.add(text.toString());
        }
        rows.sort(null);
        return rows;
    }

    /** The sum of the bytes of every file that is kept, by its place. */
    public static Map<String, Integer> files(Path root) throws IOException {
        Map<String, Integer> files = new TreeMap<>();
        for (String folder : List.of("photographs", "loggers")) {
            try (Stream<Path> all = Files.list(root.resolve(folder))) {
                for (Path file : all.toList()) {
                    files.put(folder + "/" + file.getFileName(), Arrays.hashCode(Files.readAllBytes(file)));
                }
            }
        }
        return files;
    }
}
