package afterlength.workshop.retouch;

import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The samples of a file at their common wavelengths, made into readings. */
record Samples(String layout, List<Double> at_nm, List<RawSample> raw, List<RejectedLine> rejected) {

    InstrumentFile file() {
        if (!PaletteGrid.coveredBy(at_nm)) {
            return tooLittle();
        }
        double unit = RawSample.inPerCent(raw) ? 100 : 1;
        List<InstrumentReading> readings = new ArrayList<>();
        List<RejectedLine> all = new ArrayList<>(rejected);
        for (RawSample sample : raw) {
            Optional<RejectedLine> problem = sample.rejected(at_nm, unit);
            problem.ifPresentOrElse(all::add, () -> readings.add(sample.reading(at_nm, unit)));
        }
        String understood = layout + ", " + span() + ", " + (unit == 100 ? "in per cent" : "as parts of one")
                + ". Kept at 400 to 700 nm by 10.";
        return new InstrumentFile(understood, readings, all);
    }

    private InstrumentFile tooLittle() {
        List<RejectedLine> all = new ArrayList<>(rejected);
        raw.forEach(sample -> all.add(new RejectedLine(
                sample.where(),
                sample.text(),
                "the wavelengths do not cover 400 to 700 nm in steps of 20 nm or less")));
        return new InstrumentFile(
                layout + ", " + span() + ". That is too little: 400 to 700 nm in steps of 20 nm or less are needed.",
                List.of(),
                all);
    }

    private String span() {
        return at_nm.size() + " wavelengths from " + Figures.plain(at_nm.get(0)) + " to "
                + Figures.plain(at_nm.get(at_nm.size() - 1)) + " nm";
    }
}
