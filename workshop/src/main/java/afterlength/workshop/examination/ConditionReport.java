package afterlength.workshop.examination;

import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The condition of an instrument as it was found, to be printed, signed and given to the owner: what it is, how it came, how it
 * was looked at, what was seen part by part, with pictures and measures. No opinion on who made it, and none on what to do.
 *
 * @param parts findings gathered by part
 * @param views pictures before work that belong to no single finding
 * @param marks that are drawn on the pictures, each with its number
 */
record ConditionReport(
        Settings shop,
        Instrument instrument,
        Owner owner,
        Visit visit,
        List<Part> parts,
        List<Photograph> views,
        List<Sitting> sittings,
        List<Measure> measures,
        List<MeasurePair> pairs,
        List<DrawnMark> marks,
        Corrections corrections) {

    /** The findings of one part. */
    record Part(String name, List<FindingEntry> findings) {
        List<Finding> written() {
            return findings.stream().map(FindingEntry::finding).toList();
        }

        List<Photograph> pictures() {
            return findings.stream()
                    .flatMap(entry -> entry.seenOn().stream())
                    .distinct()
                    .toList();
        }
    }

    String answer() {
        return ExaminationWords.answer(parts.stream()
                .flatMap(part -> part.findings().stream())
                .map(FindingEntry::finding)
                .toList());
    }

    List<Moment> momentsMeasured() {
        return Arrays.stream(Moment.values())
                .filter(moment -> measures.stream().anyMatch(measure -> measure.moment() == moment))
                .toList();
    }

    List<MeasuredTogether> measured(Moment moment) {
        return MeasuredTogether.of(
                measures.stream().filter(measure -> measure.moment() == moment).toList());
    }

    boolean hasMoisture() {
        return Stream.concat(
                        sittings.stream().map(Sitting::air), measures.stream().map(Measure::air))
                .anyMatch(air -> air.findMoisture().isPresent());
    }

    List<DrawnMark> marksOn(Photograph photograph) {
        return marks.stream()
                .filter(mark -> mark.photographId() != null && mark.photographId() == photograph.id())
                .toList();
    }

    /** "Marked: crack line 3, 42.1 ± 0.4 mm; outline 4.", or nothing. */
    String markWords(Photograph photograph) {
        return marksOn(photograph).stream()
                .map(mark -> mark.remark().isEmpty() ? mark.about() : mark.about() + ", " + mark.remark())
                .collect(Collectors.collectingAndThen(
                        Collectors.joining("; "), words -> words.isEmpty() ? "" : "Marked: " + words + "."));
    }

    /** The name by which the paper calls a picture that was given with it. */
    static String nameOf(Photograph photograph) {
        return "picture-" + photograph.id();
    }
}
