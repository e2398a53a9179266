package afterlength.start.verbs;

import afterlength.craft.air.AirRecord;
import afterlength.craft.air.ClimateStudy;
import afterlength.craft.air.Gap;
import afterlength.craft.air.HumidityBand;
import afterlength.craft.air.LayoutGuess;
import afterlength.craft.air.LoggerNote;
import afterlength.craft.air.LoggerReading;
import afterlength.craft.air.MoistureStep;
import afterlength.craft.air.RejectedRows;
import afterlength.craft.units.Problem;
import afterlength.craft.wood.PlateResponse;
import afterlength.craft.wood.WoodCaveat;
import afterlength.start.document.AnswerDocument;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import afterlength.workshop.climate.LoggerFile;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The record of a climate logger and what it means for a plate, as a document. */
public final class LoggerAnswer {
    private final LoggerReading reading;
    private final ClimateStudy study;

    private LoggerAnswer(LoggerReading reading, ClimateStudy study) {
        this.reading = reading;
        this.study = study;
    }

    /** A file that can be opened twice: to look at its head, and to read it. */
    public interface LoggerSource {
        InputStream open() throws IOException;
    }

    public static Reply of(LoggerSource source, DocumentReader document) throws IOException {
        Optional<LayoutGuess> guess = guess(source);
        if (guess.isEmpty()) {
            return refused(
                    "No line among the first " + LoggerFile.HEAD_LINES
                            + " holds a time and two numbers. Give a file of a climate logger, with commas, semicolons or tabs.");
        }
        LoggerDocument given = new LoggerDocument(document, guess.get());
        var layout = given.layout();
        PlateResponse plate = given.plate();
        if (document.hasProblems()) {
            return new Reply.Refused(document.problems());
        }
        LoggerReading reading;
        try (InputStream file = source.open()) {
            reading = LoggerFile.read(file, layout);
        }
        return reading.broken() || reading.record().size() == 0
                ? refused(nothing(reading))
                : new Reply.Answered(new LoggerAnswer(reading, ClimateStudy.of(reading.record(), plate)).document());
    }

    private static Optional<LayoutGuess> guess(LoggerSource source) throws IOException {
        try (InputStream file = source.open()) {
            return LayoutGuess.find(LoggerFile.head(file));
        }
    }

    private static String nothing(LoggerReading reading) {
        List<String> why = new ArrayList<>();
        if (reading.broken()) {
            reading.notes().forEach(note -> why.add(note.text()));
        } else {
            why.add("No row of the file could be counted.");
        }
        reading.rejected().stream().limit(3).forEach(rows -> why.add(rows.text()));
        return String.join(" ", why);
    }

    private static Reply refused(String message) {
        return new Reply.Refused(List.of(new Problem("", null, message)));
    }

    private AnswerDocument document() {
        AirRecord record = reading.record();
        return new AnswerDocument()
                .put("rows", reading.rows())
                .put("readings", record.size())
                .put("from", moment(record.moment_s(0)))
                .put("to", moment(record.moment_s(record.size() - 1)))
                .put("temperature_C", spread(study.temperature_C()))
                .put("relative_humidity_pct", spread(study.humidity_pct()))
                .put("emc_pct", spread(study.equilibrium_pct()))
                .put("plate_pct", spread(study.plate_pct()))
                .put("hours_in_band", bands())
                .put("longest_above_75_pct_h", study.longestAbove75_h())
                .putObjects(
                        "steps_that_matter",
                        study.steps().stream().map(LoggerAnswer::step).toList())
                .putObjects(
                        "gaps",
                        study.history().gaps().stream().map(LoggerAnswer::gap).toList())
                .putObjects(
                        "rejected",
                        reading.rejected().stream().map(LoggerAnswer::rejected).toList())
                .putTexts(
                        "notes", reading.notes().stream().map(LoggerNote::text).toList())
                .putTexts("caveats", caveats());
    }

    private List<String> caveats() {
        List<String> caveats =
                new ArrayList<>(study.caveats().stream().map(WoodCaveat::text).toList());
        if (study.outsideCurve() > 0) {
            caveats.add(study.outsideCurve()
                    + " readings lie outside the range of the moisture curve, 5 to 90 % and -1.1 to 60 °C; "
                    + "they have no moisture, and the plate starts anew behind them.");
        }
        return caveats;
    }

    private AnswerDocument bands() {
        AnswerDocument bands = new AnswerDocument();
        for (HumidityBand band : HumidityBand.values()) {
            bands.put(band.words(), study.hours().getOrDefault(band, 0.0));
        }
        return bands;
    }

    /** Null where no reading has a number. */
    private static AnswerDocument spread(ClimateStudy.Spread spread) {
        return new AnswerDocument()
                .put("least", number(spread.least()), Double::doubleValue)
                .put("mean", number(spread.mean()), Double::doubleValue)
                .put("most", number(spread.most()), Double::doubleValue);
    }

    private static Optional<Double> number(double value) {
        return Double.isNaN(value) ? Optional.empty() : Optional.of(value);
    }

    /** The direction only: docs/sources.md#season-heights. */
    private static AnswerDocument step(MoistureStep step) {
        return new AnswerDocument()
                .put("from", moment(step.from_s()))
                .put("to", moment(step.to_s()))
                .put("from_pct", step.from_pct())
                .put("to_pct", step.to_pct())
                .put("strings_will_lie", step.change_pct() < 0 ? "lower" : "higher");
    }

    private static AnswerDocument gap(Gap gap) {
        return new AnswerDocument()
                .put("from", moment(gap.from_s()))
                .put("to", moment(gap.to_s()))
                .put("hours", gap.hours());
    }

    private static AnswerDocument rejected(RejectedRows rows) {
        return new AnswerDocument()
                .put("first_line", rows.firstLine())
                .put("last_line", rows.lastLine())
                .put("reason", rows.fault().words())
                .put("row", rows.firstText());
    }

    private static String moment(long moment_s) {
        return Instant.ofEpochSecond(moment_s).toString();
    }
}
