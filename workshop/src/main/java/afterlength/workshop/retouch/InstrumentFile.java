package afterlength.workshop.retouch;

import java.util.List;

/**
 * What was understood of an instrument's file, and every line that was not.
 *
 * @param understood in words: which way the wavelengths run, in what steps, whether in per cent
 */
record InstrumentFile(String understood, List<InstrumentReading> readings, List<RejectedLine> rejected) {
    InstrumentFile {
        readings = List.copyOf(readings);
        rejected = List.copyOf(rejected);
    }

    /** Wavelengths stand in a heading, one sample a line; or they run down the first column, one sample a column. */
    static InstrumentFile read(String text) {
        List<FileLine> lines = FileLine.list(text);
        return SamplesInLines.find(lines)
                .map(SamplesInLines::read)
                .or(() -> SamplesInColumns.find(lines).map(SamplesInColumns::read))
                .orElseGet(() -> nothing(lines));
    }

    private static InstrumentFile nothing(List<FileLine> lines) {
        return new InstrumentFile(
                "No wavelengths were found, neither in a heading nor down the first column, so nothing was read.",
                List.of(),
                lines.stream()
                        .map(line -> RejectedLine.of(line, "no wavelengths to read it by"))
                        .toList());
    }
}
