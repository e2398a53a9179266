package afterlength.workshop.archive;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.examination.History;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.CsvCell;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.util.List;

/** All measures of an instrument as a CSV file for a spreadsheet, the corrected and withdrawn ones too, marked as such. */
final class MeasuresFile {
    private final MeasureStore measures;

    MeasuresFile(MeasureStore measures) {
        this.measures = measures;
    }

    String of(List<Visit> visits) {
        StringWriter text = new StringWriter();
        CsvWriter csv = CsvWriter.builder()
                .bufferSize(0)
                .lineDelimiter(LineDelimiter.CRLF)
                .build(text);
        csv.writeRecord(
                "visit",
                "when_seen_from_work",
                "quantity",
                "value",
                "plus_minus",
                "unit",
                "method",
                "temperature_C",
                "relative_humidity_pct",
                "taken_at",
                "hand",
                "holds");
        for (Visit visit : visits) {
            measures.listHistories(visit.id()).forEach(history -> write(csv, visit, history));
        }
        return text.toString();
    }

    private static void write(CsvWriter csv, Visit visit, History<Measure> history) {
        for (Measure measure : history.entries()) {
            boolean holds = history.holds() && measure.equals(history.latest());
            csv.writeRecord(
                    visit.number(),
                    measure.moment().words(),
                    CsvCell.guarded(measure.title()),
                    Figures.typed(measure.value()),
                    Figures.typed(measure.plusMinus()),
                    CsvCell.guarded(measure.unit()),
                    CsvCell.guarded(measure.method()),
                    Figures.typed(measure.temperatureC()),
                    Figures.typed(measure.humidityPct()),
                    measure.takenAt().toString(),
                    CsvCell.guarded(measure.hand()),
                    holds ? "yes" : measure.withdrawn() ? "no, withdrawn" : "no, corrected or withdrawn later");
        }
    }
}
