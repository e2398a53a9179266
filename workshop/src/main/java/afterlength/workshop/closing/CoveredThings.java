package afterlength.workshop.closing;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** The table {@code last_chance.csv}, read once. */
final class CoveredThings {
    private static final List<CoveredThing> KNOWN = read();

    private CoveredThings() {}

    static List<CoveredThing> list() {
        return KNOWN;
    }

    /** What a treatment made from a template covers. */
    static List<CoveredThing> listFor(String template) {
        return KNOWN.stream().filter(thing -> thing.template().equals(template)).toList();
    }

    static Optional<CoveredThing> find(String key) {
        return KNOWN.stream().filter(thing -> thing.key().equals(key)).findFirst();
    }

    private static List<CoveredThing> read() {
        String table = "/afterlength/workshop/closing/last_chance.csv";
        try (InputStream stream = CoveredThings.class.getResourceAsStream(table)) {
            if (stream == null) {
                throw new IllegalStateException("the table last_chance.csv is missing from the program");
            }
            try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(stream)) {
                return reader.stream().map(CoveredThings::thing).toList();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the table last_chance.csv cannot be read", broken);
        }
    }

    private static CoveredThing thing(NamedCsvRecord row) {
        return new CoveredThing(
                row.getField("item"),
                row.getField("template"),
                HowRecorded.valueOf(row.getField("record")),
                row.getField("what"),
                row.getField("source"));
    }
}
