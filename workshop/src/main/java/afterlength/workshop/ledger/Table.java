package afterlength.workshop.ledger;

import java.util.List;

/**
 * A table as the database describes it.
 *
 * @param columns in the order in which they were made
 * @param references what its columns name in other tables, or in itself
 * @param key the columns of its primary key, which also give its order
 */
public record Table(String name, List<Column> columns, List<Reference> references, List<String> key) {
    /** A column and its kind: INTEGER, REAL, TEXT or BLOB; all tables are strict. */
    public record Column(String name, String kind) {
        boolean isText() {
            return kind.equals("TEXT");
        }
    }

    /** That a column names a row of a table by one of its columns. */
    public record Reference(String column, String table, String named) {}

    List<String> columnNames() {
        return columns.stream().map(Column::name).toList();
    }

    List<String> textColumns() {
        return columns.stream().filter(Column::isText).map(Column::name).toList();
    }

    static String quoted(String name) {
        return "\"" + name.replace("\"", "\"\"") + "\"";
    }
}
