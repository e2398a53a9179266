package afterlength.workshop.examination;

import afterlength.workshop.desk.Days;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Measures of one day, hand and air, so that a paper tells the air once and not with every row. */
record MeasuredTogether(LocalDate day, String hand, Air air, List<Measure> measures) {
    private record Sameness(LocalDate day, String hand, Air air) {}

    /** In the order in which the first of each was written. */
    static List<MeasuredTogether> of(List<Measure> measures) {
        Map<Sameness, List<Measure>> groups = measures.stream()
                .collect(Collectors.groupingBy(
                        measure -> new Sameness(Days.day(measure.takenAt()), measure.hand(), measure.air()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return groups.entrySet().stream()
                .map(group -> new MeasuredTogether(
                        group.getKey().day(),
                        group.getKey().hand(),
                        group.getKey().air(),
                        group.getValue()))
                .toList();
    }

    /** "Measured 4 November 2026 by Ines in air of 20.5 °C, 45 % RH, in which wood settles at 8.5 ± 0.5 % moisture." */
    String words() {
        String when = "Measured " + Days.words(day) + " by " + hand;
        if (!air.known()) {
            return when + "; the air was not read.";
        }
        String moisture = air.moistureWords();
        return when + " in air of " + air.words()
                + (moisture.isEmpty() ? "." : ", in which wood settles at " + moisture + " moisture.");
    }
}
