package afterlength.craft.colour;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The tables beside the tests, with the credit in CREDITS.md among them. */
final class ColourTable {
    private ColourTable() {}

    static List<NamedCsvRecord> rows(String name) throws IOException {
        var file = Objects.requireNonNull(ColourTable.class.getResourceAsStream(name), name);
        try (var csv = CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return csv.stream().toList();
        }
    }

    static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    static Lab lab(NamedCsvRecord row, String lightness, String a, String b) {
        return new Lab(number(row, lightness), number(row, a), number(row, b));
    }
}
