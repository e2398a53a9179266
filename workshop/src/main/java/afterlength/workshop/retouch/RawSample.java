package afterlength.workshop.retouch;

import afterlength.workshop.desk.Figures;
import java.util.List;
import java.util.Optional;

/**
 * A sample as it stands in the file.
 *
 * @param where it is listed when it is rejected
 * @param text as it is listed then
 */
record RawSample(String name, List<Double> values, String where, String text) {
    RawSample {
        values = List.copyOf(values);
    }

    /** Reflectances never reach this as parts of one; a file with larger values is written in per cent. */
    private static final double PER_CENT_ABOVE = 2;

    double largest() {
        return values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    static boolean inPerCent(Iterable<RawSample> samples) {
        double largest = 0;
        for (RawSample sample : samples) {
            largest = Math.max(largest, sample.largest());
        }
        return largest > PER_CENT_ABOVE;
    }

    InstrumentReading reading(List<Double> at_nm, double unit) {
        return new InstrumentReading(
                name, PaletteGrid.of(at_nm, values.stream().map(v -> v / unit).toList()));
    }

    /** Why no reflectance can be made of it. */
    Optional<RejectedLine> rejected(List<Double> at_nm, double unit) {
        for (int n = 0; n < values.size(); n++) {
            double part = values.get(n) / unit;
            if (at_nm.get(n) >= 400 && at_nm.get(n) <= 700 && !(part > 0 && part < 1)) {
                return Optional.of(new RejectedLine(
                        where,
                        text,
                        "at " + Figures.plain(at_nm.get(n)) + " nm it has " + Figures.plain(part)
                                + "; a reflectance lies between 0 and 1, both left out"));
            }
        }
        return Optional.empty();
    }
}
