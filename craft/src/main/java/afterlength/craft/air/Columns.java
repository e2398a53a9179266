package afterlength.craft.air;

import java.util.ArrayList;
import java.util.List;

/** Splits a row at its separator; a column in quotes may hold the separator, and a doubled quote for one. */
final class Columns {
    private Columns() {}

    static List<String> split(String row, char separator) {
        List<String> columns = new ArrayList<>();
        int start = 0;
        boolean quoted = false;
        for (int n = 0; n < row.length(); n++) {
            char letter = row.charAt(n);
            if (letter == '"') {
                quoted = !quoted;
            } else if (letter == separator && !quoted) {
                columns.add(bare(row.substring(start, n)));
                start = n + 1;
            }
        }
        columns.add(bare(row.substring(start)));
        return columns;
    }

    private static String bare(String column) {
        String stripped = column.strip();
        boolean quoted = stripped.length() > 1 && stripped.startsWith("\"") && stripped.endsWith("\"");
        return quoted
                ? stripped.substring(1, stripped.length() - 1)
                        .replace("\"\"", "\"")
                        .strip()
                : stripped;
    }
}
