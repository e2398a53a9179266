package afterlength.workshop.handover;

import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The measures of an instrument when it comes again, beside those with which it went home last. Of several measures of a quantity the
 * one written last counts; at the handover those after work before those taken earlier.
 *
 * @param earlier the visit that ended with the handover
 */
record YearCheck(Visit earlier, Handover handover, Visit visit, List<CheckRow> rows) {

    List<CheckRow> measured() {
        return rows.stream().filter(CheckRow::measured).toList();
    }

    List<CheckRow> open() {
        return rows.stream().filter(row -> !row.measured()).toList();
    }

    /** Nothing when the instrument never went home from here before this visit. */
    static Optional<YearCheck> find(Visit visit, VisitStore visits, HandoverStore handovers, MeasureStore measures) {
        return visits.listOf(visit.instrumentId()).stream()
                .filter(other -> other.id() < visit.id())
                .max(Comparator.comparing(Visit::id))
                .flatMap(earlier -> handovers
                        .findNow(earlier.id())
                        .map(handover -> new YearCheck(earlier, handover, visit, rows(earlier, visit, measures))));
    }

    private static List<CheckRow> rows(Visit earlier, Visit visit, MeasureStore measures) {
        Map<String, Measure> then = new LinkedHashMap<>();
        for (Moment moment : Moment.values()) {
            measures.listNow(earlier.id()).stream()
                    .filter(measure -> measure.moment() == moment)
                    .forEach(measure -> then.put(kind(measure), measure));
        }
        Map<String, Measure> now = new LinkedHashMap<>();
        measures.listNow(visit.id()).forEach(measure -> now.put(kind(measure), measure));
        return then.entrySet().stream()
                .map(entry -> new CheckRow(entry.getValue(), now.get(entry.getKey())))
                .toList();
    }

    private static String kind(Measure measure) {
        return measure.quantity().toLowerCase(Locale.ROOT) + " " + measure.unit();
    }
}
