package afterlength.workshop.retouch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A file whose wavelengths run down the first column; each further column is one sample. */
final class SamplesInColumns {
    private static final int FEWEST = 8;

    private final List<FileLine> lines;
    private final List<FileLine> rows = new ArrayList<>();
    private final List<RejectedLine> rejected = new ArrayList<>();
    private final int columns;
    private List<String> names = List.of();
    private double last_nm;

    private SamplesInColumns(List<FileLine> lines) {
        this.lines = lines;
        columns = lines.stream()
                .filter(SamplesInColumns::looksLikeRow)
                .mapToInt(line -> line.cells().size())
                .max()
                .orElse(0);
    }

    static Optional<SamplesInColumns> find(List<FileLine> lines) {
        return lines.stream().filter(SamplesInColumns::looksLikeRow).count() >= FEWEST
                ? Optional.of(new SamplesInColumns(lines))
                : Optional.empty();
    }

    private static boolean looksLikeRow(FileLine line) {
        return line.cell(0).matches("\\d{3,4}.*")
                && line.wavelength_nm(0).isPresent()
                && line.number(1).isPresent();
    }

    InstrumentFile read() {
        lines.forEach(this::take);
        List<Double> at_nm =
                rows.stream().map(row -> row.wavelength_nm(0).orElseThrow()).toList();
        List<RawSample> samples = new ArrayList<>();
        for (int column = 1; column < columns; column++) {
            samples.add(sample(column));
        }
        return new Samples("One sample a column", at_nm, samples, rejected).file();
    }

    private void take(FileLine line) {
        OptionalDouble at_nm = line.wavelength_nm(0);
        if (at_nm.isEmpty() && rows.isEmpty() && names.isEmpty() && line.cells().size() == columns) {
            names = line.cells();
        } else if (at_nm.isEmpty()) {
            rejected.add(RejectedLine.of(line, "does not begin with a wavelength"));
        } else if (at_nm.getAsDouble() <= last_nm) {
            rejected.add(RejectedLine.of(line, "its wavelength does not come after the one before"));
        } else {
            takeRow(line, at_nm.getAsDouble());
        }
    }

    private void takeRow(FileLine line, double at_nm) {
        for (int column = 1; column < columns; column++) {
            if (line.number(column).isEmpty()) {
                String cell = line.cell(column);
                rejected.add(RejectedLine.of(
                        line,
                        "in column " + (column + 1) + " "
                                + (cell.isEmpty()
                                        ? "nothing stands"
                                        : "“" + cell + "” stands, which is not a number")));
                return;
            }
        }
        last_nm = at_nm;
        rows.add(line);
    }

    private RawSample sample(int column) {
        String name =
                column < names.size() && !names.get(column).isEmpty() ? names.get(column) : "column " + (column + 1);
        List<Double> values =
                rows.stream().map(row -> row.number(column).orElseThrow()).toList();
        return new RawSample(name, values, "column " + (column + 1), name);
    }
}
