package afterlength.workshop.examination;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Words for parts and kinds of findings, each with its definition and its origin. It is offered and never closed: a shop's own
 * words are as good. Source of the rows: docs/sources.md#findings-vocabulary.
 */
public final class Vocabulary {
    private static final List<Term> TERMS = read();

    private Vocabulary() {}

    public static List<Term> terms() {
        return TERMS;
    }

    /** Every part once, in the order of the vocabulary. */
    public static List<String> parts() {
        return TERMS.stream().map(Term::part).distinct().toList();
    }

    /** The term with exactly these words, whatever their case. */
    public static Optional<Term> find(String part, String words) {
        return TERMS.stream()
                .filter(term -> term.part().equalsIgnoreCase(part.strip()))
                .filter(term -> term.words().equalsIgnoreCase(words.strip()))
                .findFirst();
    }

    private static List<Term> read() {
        try (InputStream file = Vocabulary.class.getResourceAsStream("findings_vocabulary.csv")) {
            if (file == null) {
                throw new IllegalStateException("findings_vocabulary.csv is missing from the program");
            }
            try (CsvReader<NamedCsvRecord> rows =
                            CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(file, StandardCharsets.UTF_8));
                    Stream<NamedCsvRecord> stream = rows.stream()) {
                return stream.map(Vocabulary::term).toList();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("findings_vocabulary.csv cannot be read", broken);
        }
    }

    private static Term term(NamedCsvRecord row) {
        return new Term(
                row.getField("part"),
                row.getField("type"),
                row.getField("neutral_term"),
                row.getField("definition"),
                row.getField("aat_id"),
                row.getField("usual_treatments"),
                row.getField("blocks_play").equals("y"),
                row.getField("source_kind"));
    }
}
