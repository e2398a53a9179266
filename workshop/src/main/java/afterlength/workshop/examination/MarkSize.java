package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;
import org.jspecify.annotations.Nullable;

/** What a mark measures, each value with its ±: length of a line or longest extent of an area, and the area itself. */
record MarkSize(
        @Nullable Double size_mm,
        @Nullable Double plusMinus_mm,
        @Nullable Double area_mm2,
        @Nullable Double areaPlusMinus_mm2) {
    static final MarkSize NONE = new MarkSize(null, null, null, null);

    boolean known() {
        return size_mm != null;
    }

    /** "42.1 ± 0.4 mm", or nothing. */
    String lengthWords() {
        return size_mm == null || plusMinus_mm == null ? "" : Figures.plusMinus(size_mm, plusMinus_mm, "mm");
    }

    /** "316 ± 9 mm², 28.1 ± 0.4 mm at its longest". */
    String words() {
        return area_mm2 == null || areaPlusMinus_mm2 == null
                ? lengthWords()
                : Figures.plusMinus(area_mm2, areaPlusMinus_mm2, "mm²") + ", " + lengthWords() + " at its longest";
    }

    /** The length as it is shown, for a finding whose words shall say the same. */
    MarkSize rounded() {
        return size_mm == null || plusMinus_mm == null
                ? NONE
                : new MarkSize(shown(size_mm, plusMinus_mm), shown(plusMinus_mm, plusMinus_mm), null, null);
    }

    private static double shown(double value, double plusMinus) {
        double steps = Math.pow(10, Figures.decimals(plusMinus));
        return Math.round(value * steps) / steps;
    }
}
