package afterlength.workshop.advice;

import afterlength.workshop.agreement.Fit;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;

/** The rules, read once from {@code advice_rules.csv}. */
final class AdviceRules {
    private static final List<AdviceRule> KNOWN = read();

    private AdviceRules() {}

    static List<AdviceRule> list() {
        return KNOWN;
    }

    private static List<AdviceRule> read() {
        String table = "/afterlength/workshop/advice/advice_rules.csv";
        try (InputStream stream = AdviceRules.class.getResourceAsStream(table)) {
            if (stream == null) {
                throw new IllegalStateException("the table advice_rules.csv is missing from the program");
            }
            try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(stream)) {
                return reader.stream().map(AdviceRules::rule).toList();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the table advice_rules.csv cannot be read", broken);
        }
    }

    private static AdviceRule rule(NamedCsvRecord row) {
        return new AdviceRule(
                row.getField("rule"),
                Arrays.stream(row.getField("fits").split(";"))
                        .map(fit -> Fit.of(fit.strip()))
                        .toList(),
                Condition.list(row.getField("when")),
                row.getField("treatment"),
                row.getField("stance").equals("FOR"),
                row.getField("reason"),
                row.getField("source"));
    }
}
