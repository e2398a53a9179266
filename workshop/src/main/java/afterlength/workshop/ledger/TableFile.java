package afterlength.workshop.ledger;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as a CSV file (RFC 4180, UTF-8; docs/sources.md#tables-as-csv) from which it comes back to the last bit: the first row names the columns; whole numbers
 * and real numbers are written so that reading gives the same number; nothing is {@code \N}, and a text that begins with a
 * backslash gets one more. Words that a spreadsheet would carry out as a formula are guarded as {@link CsvCell} says.
 */
final class TableFile {
    private static final String NOTHING = "\\N";
    private static final int ROWS_AT_ONCE = 1000;

    private final Table table;
    private final Connection connection;

    TableFile(Table table, Connection connection) {
        this.table = table;
        this.connection = connection;
    }

    /** Writes all rows in the order of the key, and answers how many there were. The stream stays open. */
    long write(OutputStream out) throws SQLException, IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text);
        csv.writeRecord(table.columnNames());
        long rows = 0;
        try (Statement query = connection.createStatement()) {
            ResultSet row = query.executeQuery(selection());
            while (row.next()) {
                csv.writeRecord(fields(row));
                rows++;
            }
        }
        csv.flush();
        text.flush();
        return rows;
    }

    private String selection() {
        return "SELECT " + names(table.columnNames()) + " FROM " + Table.quoted(table.name())
                + (table.key().isEmpty() ? " ORDER BY rowid" : " ORDER BY " + names(table.key()));
    }

    private static String names(List<String> names) {
        return names.stream().map(Table::quoted).collect(Collectors.joining(", "));
    }

    private List<String> fields(ResultSet row) throws SQLException {
        List<String> fields = new ArrayList<>();
        for (int at = 1; at <= table.columns().size(); at++) {
            fields.add(field(row, at));
        }
        return fields;
    }

    private String field(ResultSet row, int at) throws SQLException {
        String kind = table.columns().get(at - 1).kind();
        if (kind.equals("REAL")) {
            double value = row.getDouble(at);
            return row.wasNull() ? NOTHING : Double.toString(value);
        }
        String value = row.getString(at);
        if (value == null) {
            return NOTHING;
        }
        return kind.equals("INTEGER") ? value : text(value);
    }

    private static String text(String value) {
        return value.startsWith("\\") ? "\\" + value : CsvCell.guarded(value);
    }

    private static String textOf(String field) {
        return field.startsWith("\\") ? field.substring(1) : CsvCell.plain(field);
    }

    /**
     * Puts the rows of a file into the table, which is empty.
     *
     * @throws UnfittingRows when the file is not one of this table
     */
    long read(InputStream in) throws SQLException, IOException {
        CsvReader<CsvRecord> csv = CsvReader.builder()
                .skipEmptyLines(false)
                .ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8));
        Iterator<CsvRecord> rows = csv.iterator();
        if (!rows.hasNext()) {
            throw new UnfittingRows(table.name(), "it is empty; its first row has to name the columns");
        }
        List<String> named = rows.next().getFields();
        if (!named.equals(table.columnNames())) {
            throw new UnfittingRows(
                    table.name(),
                    "its columns are " + String.join(", ", named) + "; this table has "
                            + String.join(", ", table.columnNames()));
        }
        return insert(rows);
    }

    private long insert(Iterator<CsvRecord> rows) throws SQLException {
        long count = 0;
        try (PreparedStatement insertion = connection.prepareStatement(insertion())) {
            while (rows.hasNext()) {
                CsvRecord row = rows.next();
                bind(insertion, row);
                insertion.addBatch();
                if (++count % ROWS_AT_ONCE == 0) {
                    insertion.executeBatch();
                }
            }
            insertion.executeBatch();
        }
        return count;
    }

    private String insertion() {
        return "INSERT INTO " + Table.quoted(table.name()) + " (" + names(table.columnNames()) + ") VALUES ("
                + table.columns().stream().map(column -> "?").collect(Collectors.joining(", ")) + ")";
    }

    private void bind(PreparedStatement insertion, CsvRecord row) throws SQLException {
        for (int at = 0; at < table.columns().size(); at++) {
            Table.Column column = table.columns().get(at);
            try {
                bind(insertion, at + 1, column.kind(), row.getField(at));
            } catch (NumberFormatException wrong) {
                throw new UnfittingRows(
                        table.name(),
                        "line " + row.getStartingLineNumber() + " has “" + row.getField(at) + "” as " + column.name()
                                + ", which is no number");
            }
        }
    }

    private static void bind(PreparedStatement insertion, int at, String kind, String field) throws SQLException {
        if (field.equals(NOTHING)) {
            insertion.setObject(at, null);
        } else if (kind.equals("INTEGER")) {
            insertion.setLong(at, Long.parseLong(field));
        } else if (kind.equals("REAL")) {
            insertion.setDouble(at, Double.parseDouble(field));
        } else {
            insertion.setString(at, textOf(field));
        }
    }
}
