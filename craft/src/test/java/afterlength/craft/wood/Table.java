package afterlength.craft.wood;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The tables beside the tests, with the credit in src/test/resources/wood/CREDITS.md. */
final class Table {
    private Table() {}

    static List<NamedCsvRecord> rows(String name) throws IOException {
        var file = Objects.requireNonNull(Table.class.getResourceAsStream("/wood/" + name), name);
        try (var csv = CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return csv.stream().toList();
        }
    }
}
