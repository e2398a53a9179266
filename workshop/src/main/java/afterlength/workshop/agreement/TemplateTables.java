package afterlength.workshop.agreement;

import afterlength.craft.estimate.HandsOn;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Reads the two tables of the shop's practice: {@code treatments.csv}, words for the owner ({@code docs/sources.md#proposal-words}),
 * and {@code treatment_steps.csv}, minutes and waits ({@code docs/sources.md#shop-times}). Rows marked as read name
 * {@code docs/sources.md#petherick-1903} or {@code docs/sources.md#mayson-1909}; all others are common practice.
 */
final class TemplateTables {
    private TemplateTables() {}

    static List<TreatmentTemplate> read() {
        Map<String, List<TemplateStep>> steps = rows("treatment_steps.csv").stream()
                .collect(Collectors.groupingBy(
                        row -> row.getField("template"),
                        Collectors.mapping(TemplateTables::step, Collectors.toList())));
        return rows("treatments.csv").stream()
                .map(row -> template(row, steps.getOrDefault(row.getField("template"), List.of())))
                .toList();
    }

    private static TemplateStep step(NamedCsvRecord row) {
        return new TemplateStep(
                row.getField("step"),
                new HandsOn(
                        number(row, "hands_on_min_low"),
                        number(row, "hands_on_min_typ"),
                        number(row, "hands_on_min_high")),
                new Wait(number(row, "wait_h_low"), number(row, "wait_h_typ"), number(row, "wait_h_high")),
                row.getField("needs"),
                row.getField("blocks_instrument").equals("y"),
                row.getField("source_kind"));
    }

    private static TreatmentTemplate template(NamedCsvRecord row, List<TemplateStep> steps) {
        String job = row.getField("job");
        return new TreatmentTemplate(
                row.getField("template"),
                Tier.valueOf(row.getField("tier")),
                job.isEmpty() ? JobPart.TREATMENT : JobPart.valueOf(job),
                row.getField("title"),
                row.getField("reason"),
                row.getField("if_left"),
                Undoing.valueOf(row.getField("undoing")),
                row.getField("reversibility"),
                row.getField("materials"),
                row.getField("counts"),
                fits(row.getField("fits")),
                row.getField("caution"),
                row.getField("mark"),
                steps);
    }

    private static List<Fit> fits(String text) {
        return Arrays.stream(text.split(";"))
                .map(String::strip)
                .filter(fit -> !fit.isEmpty())
                .map(Fit::of)
                .toList();
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    private static List<NamedCsvRecord> rows(String table) {
        try (InputStream stream =
                TemplateTables.class.getResourceAsStream("/afterlength/workshop/agreement/" + table)) {
            if (stream == null) {
                throw new IllegalStateException("the table " + table + " is missing from the program");
            }
            try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(stream)) {
                return reader.stream().toList();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the table " + table + " cannot be read", broken);
        }
    }
}
