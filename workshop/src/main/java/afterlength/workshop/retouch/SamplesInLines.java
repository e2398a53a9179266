package afterlength.workshop.retouch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A file whose heading names the wavelengths; each line below is one sample. */
final class SamplesInLines {
    /** Fewer wavelengths in a line are no heading. */
    private static final int FEWEST = 8;

    private final List<FileLine> lines;
    private final FileLine heading;
    private final List<Integer> columns = new ArrayList<>();
    private final List<Double> at_nm = new ArrayList<>();
    private final List<RawSample> samples = new ArrayList<>();
    private final List<RejectedLine> rejected = new ArrayList<>();

    private SamplesInLines(List<FileLine> lines, FileLine heading) {
        this.lines = lines;
        this.heading = heading;
        for (int column = 0; column < heading.cells().size(); column++) {
            OptionalDouble value_nm = heading.wavelength_nm(column);
            if (value_nm.isPresent() && (at_nm.isEmpty() || value_nm.getAsDouble() > last(at_nm))) {
                columns.add(column);
                at_nm.add(value_nm.getAsDouble());
            }
        }
    }

    static Optional<SamplesInLines> find(List<FileLine> lines) {
        return lines.stream()
                .map(line -> new SamplesInLines(lines, line))
                .filter(trial -> trial.at_nm.size() >= FEWEST)
                .findFirst();
    }

    private static double last(List<Double> values) {
        return values.get(values.size() - 1);
    }

    InstrumentFile read() {
        for (FileLine line : lines) {
            if (line.number() < heading.number()) {
                rejected.add(RejectedLine.of(line, "stands before the heading with the wavelengths"));
            } else if (line.number() > heading.number()) {
                take(line);
            }
        }
        return new Samples("One sample a line", at_nm, samples, rejected).file();
    }

    private void take(FileLine line) {
        List<Double> values = new ArrayList<>();
        for (int n = 0; n < at_nm.size(); n++) {
            OptionalDouble value = line.number(columns.get(n));
            if (value.isEmpty()) {
                rejected.add(RejectedLine.of(line, reason(line, n)));
                return;
            }
            values.add(value.getAsDouble());
        }
        samples.add(new RawSample(name(line), values, "line " + line.number(), line.text()));
    }

    private String reason(FileLine line, int n) {
        String cell = line.cell(columns.get(n));
        return "at " + Math.round(at_nm.get(n)) + " nm "
                + (cell.isEmpty() ? "nothing stands" : "“" + cell + "” stands, which is not a number");
    }

    /** Whatever stands beside the wavelengths and is not empty. */
    private String name(FileLine line) {
        for (int column = 0; column < line.cells().size(); column++) {
            if (!columns.contains(column) && !line.cell(column).isEmpty()) {
                return line.cell(column);
            }
        }
        return "line " + line.number();
    }
}
