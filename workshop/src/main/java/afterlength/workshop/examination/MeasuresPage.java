package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The measures of a visit beside the form for the next one.
 *
 * @param justWithdrawn what can be brought back with one touch, or null
 */
record MeasuresPage(
        Frame frame,
        long visitId,
        List<MeasureEntry> measures,
        List<Measure> withdrawn,
        List<MeasurePair> pairs,
        @Nullable Measure justWithdrawn,
        MeasureFields fields) {

    String answer() {
        if (measures.isEmpty()) {
            return "Nothing measured yet.";
        }
        String count = Counted.words(measures.size(), "measure", "measures");
        return pairs.isEmpty()
                ? count + "."
                : count + "; " + Counted.within(pairs.size(), "quantity", "quantities") + " before and after work.";
    }

    boolean hasMoisture() {
        return measures.stream()
                .anyMatch(entry -> !entry.measure().air().moistureWords().isEmpty());
    }

    Typed typed() {
        return fields.typed();
    }
}
