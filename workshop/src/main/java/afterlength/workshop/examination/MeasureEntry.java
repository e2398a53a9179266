package afterlength.workshop.examination;

import java.util.List;

/** A measure as a page shows it, with what was written before, the newest first. */
record MeasureEntry(Measure measure, List<Measure> earlier) {
    static MeasureEntry of(History<Measure> history) {
        Measure latest = history.latest();
        return new MeasureEntry(latest, History.differing(latest, history.earlier(), Measure::words));
    }
}
