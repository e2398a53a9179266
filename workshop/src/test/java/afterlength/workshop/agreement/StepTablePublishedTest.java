package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Our steps carry the figures of the study they were taken from, docs/sources.md#shop-times, with its marks. */
class StepTablePublishedTest {
    private static final List<String> COLUMNS = List.of(
            "treatment",
            "step",
            "hands_on_min_low",
            "hands_on_min_typ",
            "hands_on_min_high",
            "wait_h_low",
            "wait_h_typ",
            "wait_h_high",
            "needs",
            "blocks_instrument",
            "source_kind");

    private static List<List<String>> rows(String table) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        try (InputStream stream = Objects.requireNonNull(StepTablePublishedTest.class.getResourceAsStream(table));
                CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(stream)) {
            reader.forEach(row -> rows.add(COLUMNS.stream().map(row::getField).toList()));
        }
        return rows;
    }

    @Test
    void everyStepStandsInTheStudyWithTheSameFiguresAndMark() throws IOException {
        assertThat(rows("steps_as_studied.csv")).containsAll(rows("treatment_steps.csv"));
    }

    @Test
    void onlyTheOneYearCheckIsLeftToAnotherStage() throws IOException {
        List<List<String>> left = new ArrayList<>(rows("steps_as_studied.csv"));
        left.removeAll(rows("treatment_steps.csv"));
        assertThat(left).singleElement().satisfies(row -> assertThat(row).startsWith("follow-up"));
    }

    @Test
    void everyStepKeepsAMark() {
        Set<String> marks = new TreeSet<>();
        TreatmentTemplates.list().forEach(template -> template.steps().forEach(step -> marks.add(step.mark())));
        assertThat(marks)
                .allMatch(mark -> mark.contains("COMMON PRACTICE"))
                .contains("COMMON PRACTICE", "READ Mayson 1909 (wait); hands-on COMMON PRACTICE");
    }
}
