package afterlength.workshop.setup;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.examination.Air;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was measured on the instrument as it goes home and belongs on the card in its case. What was not measured is empty, and the
 * card leaves a line for the pencil.
 */
record CardFacts(String afterLength, String post, String air, String bridgeHeight, String boardEnd) {
    static CardFacts of(List<Measure> measures) {
        List<Measure> home = measures.stream()
                .filter(measure -> measure.moment() == Moment.AFTER)
                .toList();
        return new CardFacts(
                figure(home, Quantity.AFTER_LENGTH),
                post(home),
                air(home),
                figure(home, Quantity.BRIDGE_HEIGHT),
                boardEnd(home));
    }

    private static String figure(List<Measure> measures, Quantity quantity) {
        return find(measures, quantity).map(Measure::figure).orElse("");
    }

    private static Optional<Measure> find(List<Measure> measures, Quantity quantity) {
        return measures.stream()
                .filter(measure -> measure.quantity().equals(quantity.name()))
                .findFirst();
    }

    private static String boardEnd(List<Measure> measures) {
        Optional<Measure> bass = find(measures, Quantity.BOARD_END_CLEARANCE_BASS);
        Optional<Measure> treble = find(measures, Quantity.BOARD_END_CLEARANCE_TREBLE);
        return bass.isEmpty() || treble.isEmpty()
                ? ""
                : Figures.fixed(bass.get().value(), 1) + " and " + treble.get().figure();
    }

    /** The shop's own words for where the post stands, such as "post behind the foot". */
    private static String post(List<Measure> measures) {
        return measures.stream()
                .filter(measure -> measure.quantity().toLowerCase(Locale.ROOT).startsWith("post"))
                .map(measure -> measure.title().substring("post".length()).strip() + " " + measure.figure())
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }

    private static String air(List<Measure> measures) {
        return measures.stream()
                .filter(measure -> measure.air().known())
                .max(Comparator.comparing(Measure::takenAt))
                .map(Measure::air)
                .map(Air::words)
                .orElse("");
    }
}
