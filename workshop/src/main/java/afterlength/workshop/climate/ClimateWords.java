package afterlength.workshop.climate;

import afterlength.craft.air.ClimateStudy;
import afterlength.craft.air.Gap;
import afterlength.craft.air.HumidityBand;
import afterlength.craft.air.MoistureStep;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import java.time.Instant;

/** How a record of air is told. */
final class ClimateWords {
    private static final double WEEK_H = 168;

    private ClimateWords() {}

    /** The plate now, and the last step that mattered. */
    static String answer(ClimateStudy study) {
        int last = study.history().record().size() - 1;
        double plate_pct = study.history().plate_pct(last);
        String plate = Double.isNaN(plate_pct)
                ? "The last air lies outside the range of the moisture curve"
                : "A bare belly of 2.5 mm held about " + Figures.plusMinus(plate_pct, 0.5, "%")
                        + " moisture at the last reading, "
                        + Days.words(
                                Instant.ofEpochSecond(study.history().record().moment_s(last)));
        return study.steps().isEmpty()
                ? plate + "; no change in this record is large enough to matter by itself."
                : plate + ". " + step(study.steps().get(study.steps().size() - 1));
    }

    static String step(MoistureStep step) {
        boolean drying = step.change_pct() < 0;
        return (drying ? "It lost " : "It gained ") + Figures.fixed(Math.abs(step.change_pct()), 1) + " % between "
                + Days.words(Instant.ofEpochSecond(step.from_s())) + " and "
                + Days.words(Instant.ofEpochSecond(step.to_s()))
                + (drying
                        ? ": look at seams and old cracks; strings lie lower after it."
                        : ": look at string heights; strings lie higher after it.");
    }

    static String hours(double hours) {
        return hours >= 2 * 24 ? Figures.fixed(hours / 24, 1) + " days" : Figures.fixed(hours, 1) + " h";
    }

    static String share(ClimateStudy study, HumidityBand band) {
        double all = study.hours().values().stream().mapToDouble(hours -> hours).sum();
        double part = 100 * study.hours().getOrDefault(band, 0.0) / all;
        return part > 0 && part < 1 ? "under 1 %" : Figures.fixed(part, 0) + " %";
    }

    static String gap(Gap gap) {
        return Days.words(Instant.ofEpochSecond(gap.from_s())) + " to " + Days.words(Instant.ofEpochSecond(gap.to_s()))
                + ", " + hours(gap.hours());
    }

    static String damp(ClimateStudy study) {
        return study.longestAbove75_h() < WEEK_H
                ? ""
                : "Above 75 % for " + hours(study.longestAbove75_h())
                        + " without a break: mould is likely. Look behind cases and " + "in linings.";
    }

    static String spread(ClimateStudy.Spread spread, int decimals, String unit) {
        return Double.isNaN(spread.least())
                ? "–"
                : Figures.fixed(spread.least(), decimals) + " to " + Figures.fixed(spread.most(), decimals) + " " + unit
                        + ", mean " + Figures.fixed(spread.mean(), decimals);
    }

    static String outsideCurve(ClimateStudy study) {
        return study.outsideCurve() == 0
                ? ""
                : study.outsideCurve()
                        + " readings lie outside 5 to 90 % or −1.1 to 60 °C, where the moisture curve was checked; "
                        + "they have no moisture.";
    }
}
