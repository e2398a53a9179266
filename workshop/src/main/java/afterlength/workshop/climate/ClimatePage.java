package afterlength.workshop.climate;

import afterlength.craft.air.ClimateStudy;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The climate of the shop at one place.
 *
 * @param study what the record means, or null while there is none
 * @param chart the same drawn, as SVG
 */
record ClimatePage(
        Frame frame,
        List<String> places,
        String place,
        int days,
        @Nullable ClimateStudy study,
        String chart,
        List<AirFile> files,
        List<AirFile> putAway,
        boolean demonstration,
        Typed typed) {
    static final List<Integer> SPANS = List.of(7, 30, 92, 366, 3660);
    private static final int GAPS_SHOWN = 8;

    String span(int days) {
        return switch (days) {
            case 7 -> "a week";
            case 30 -> "a month";
            case 92 -> "three months";
            case 366 -> "a year";
            default -> "all";
        };
    }

    String answer() {
        return study == null
                ? "No logger has told of the air yet. Bring the file of a climate logger; instruments remember more of the air than "
                        + "people do."
                : ClimateWords.answer(study);
    }

    List<String> gaps(ClimateStudy known) {
        return known.history().gaps().stream()
                .limit(GAPS_SHOWN)
                .map(ClimateWords::gap)
                .toList();
    }
}
