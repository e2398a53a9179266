package afterlength.workshop.examination;

import java.util.List;

/** The examination as the instrument's page tells it. */
record ExaminationSummary(
        long visitId,
        List<Photograph> photographs,
        List<FindingEntry> findings,
        List<Measure> measures,
        List<MeasurePair> pairs) {
    /** As many as stand in one or two rows. */
    private static final int PICTURES_SHOWN = 8;

    String answer() {
        if (findings.isEmpty() && photographs.isEmpty() && measures.isEmpty()) {
            return "Not examined yet.";
        }
        return ExaminationWords.answer(
                findings.stream().map(FindingEntry::finding).toList());
    }

    List<Photograph> picturesShown() {
        return photographs.subList(0, Math.min(PICTURES_SHOWN, photographs.size()));
    }

    int picturesMore() {
        return photographs.size() - picturesShown().size();
    }

    /** Measures that do not stand in a pair. */
    List<Measure> single() {
        List<String> paired = pairs.stream().map(pair -> pair.before().kind()).toList();
        return measures.stream()
                .filter(measure -> !paired.contains(measure.kind()))
                .toList();
    }
}
