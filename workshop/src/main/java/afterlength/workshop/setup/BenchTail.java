package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeLoad;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.LoadAnswer;
import afterlength.craft.setup.SeatedString;
import afterlength.craft.setup.StringBreak;
import afterlength.craft.setup.TailEnd;
import java.util.List;
import java.util.Optional;

/** What is known behind the bridge, and what follows from it. */
record BenchTail(BridgeShape shape, SetupBench bench) {
    private static final List<BenchReading> ANGLE =
            List.of(BenchReading.AFTER_LENGTH, BenchReading.TAIL_HEIGHT, BenchReading.BOARD_SLOPE);
    private static final List<BenchReading> LOAD = List.of(
            BenchReading.AFTER_LENGTH,
            BenchReading.TAIL_HEIGHT,
            BenchReading.TAIL_SPACING,
            BenchReading.BOARD_SLOPE,
            BenchReading.HALF_FEET);

    /** What still has to be measured before the load can be reckoned. */
    List<BenchReading> missingForLoad() {
        return LOAD.stream().filter(reading -> bench.find(reading).isEmpty()).toList();
    }

    List<BenchReading> missingForAngle() {
        return ANGLE.stream().filter(reading -> bench.find(reading).isEmpty()).toList();
    }

    double get(BenchReading reading) {
        return bench.find(reading).orElseThrow();
    }

    /** Empty while something is still to be measured. */
    Optional<LoadAnswer> findLoad() {
        if (!missingForLoad().isEmpty()) {
            return Optional.empty();
        }
        TailEnd tail = new TailEnd(
                get(BenchReading.AFTER_LENGTH),
                get(BenchReading.TAIL_HEIGHT),
                get(BenchReading.TAIL_SPACING),
                get(BenchReading.BOARD_SLOPE));
        return Optional.of(BridgeLoad.of(shape, tail, get(BenchReading.HALF_FEET)));
    }

    /** The string over the bridge in the side view; its angle follows from heights alone, tension does not enter. */
    Optional<StringBreak.Heights> findBreak(int string) {
        if (!missingForAngle().isEmpty()
                || Math.abs(height_mm(string) - get(BenchReading.TAIL_HEIGHT)) >= get(BenchReading.AFTER_LENGTH)) {
            return Optional.empty();
        }
        SeatedString seated = shape.strings().get(string);
        double rise_mm = seated.underside().mm() - seated.nutUnderside().mm();
        double against_deg = Math.toDegrees(Math.atan2(rise_mm, shape.inputs().speakingLength_mm()));
        return Optional.of(new StringBreak.Heights(
                get(BenchReading.AFTER_LENGTH),
                get(BenchReading.TAIL_HEIGHT),
                height_mm(string),
                get(BenchReading.BOARD_SLOPE) + against_deg));
    }

    /** Middle of the string over the belly, at the bridge. */
    private double height_mm(int string) {
        return shape.inputs().projection_mm()
                + shape.strings().get(string).underside().mm()
                + shape.inputs().strings().get(string).diameter_mm() / 2;
    }
}
