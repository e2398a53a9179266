package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Exact facts of equal crowns, and the printed bow windows of docs/sources.md#setup-worked-example. */
class BowPublishedTest {
    /** So near the bridge that the strings' fall towards the nut does not show. */
    private static final double AT_THE_BRIDGE_mm = 1e-7;

    private static BowReading open(BridgeInputs inputs, double distance_mm) {
        return (BowReading) BowClearance.at(Bench.shape(inputs), BowPlace.onOpenStrings(distance_mm, 0));
    }

    /** Four equal strings with equal chords s on a crown of radius R, even at bass and treble. */
    private static BridgeInputs equalChords(double radius_mm, double chord_mm) {
        double step_rad = 2 * Math.asin(chord_mm / (2 * radius_mm));
        List<Double> y_mm = List.of(
                -radius_mm * Math.sin(1.5 * step_rad),
                -radius_mm * Math.sin(0.5 * step_rad),
                radius_mm * Math.sin(0.5 * step_rad),
                radius_mm * Math.sin(1.5 * step_rad));
        return Bench.violin(0.7, 0.7, 0.7, 0.7)
                .change()
                .bridgeSpacing(new StringSpacing.Given(y_mm))
                .nutClearance_mm(new BassTreble(0.4, 0.4))
                .boardEndClearance_mm(new BassTreble(4.5, 4.5))
                .crown(new RadiusCrown(radius_mm))
                .done();
    }

    @Test
    void equalChordsGiveStepsOfTwiceTheArcSine() {
        for (double radius_mm : new double[] {36, 42, 50, 62}) {
            BowReading reading = open(equalChords(radius_mm, 11.2), AT_THE_BRIDGE_mm);
            double step_deg = Math.toDegrees(2 * Math.asin(11.2 / (2 * radius_mm)));
            for (int inner = 1; inner <= 2; inner++) {
                assertThat(reading.strings()
                                .get(inner)
                                .findClearAngle()
                                .orElseThrow()
                                .deg())
                        .isCloseTo(step_deg, within(1e-6)); // the bow is not quite at the bridge
            }
        }
    }

    @Test
    void equalChordsStandTheirSquareOverTwiceTheRadiusAboveTheNeighbours() {
        for (double radius_mm : new double[] {36, 42, 50, 62}) {
            BowReading reading = open(equalChords(radius_mm, 11.2), AT_THE_BRIDGE_mm);
            for (int inner = 1; inner <= 2; inner++) {
                assertThat(reading.strings()
                                .get(inner)
                                .findMargin()
                                .orElseThrow()
                                .mm())
                        .isCloseTo(11.2 * 11.2 / (2 * radius_mm), within(1e-6));
            }
        }
    }

    /** Printed: R 42, outer 33.5: 15.67 degrees and 1.56 mm by chords of 11.45 mm, the arc of the outer two in three. */
    @Test
    void theViolinOfTheExampleStepsByFifteenAndTwoThirds() {
        double chord_mm = 2 * 42 * Math.sin(Math.asin(33.5 / 2 / 42) / 3);
        BowReading reading = open(equalChords(42, chord_mm), AT_THE_BRIDGE_mm);
        assertThat(reading.strings().get(1).findClearAngle().orElseThrow().deg())
                .isCloseTo(15.67, within(0.006));
        assertThat(reading.strings().get(1).findMargin().orElseThrow().mm()).isCloseTo(1.56, within(0.006));
    }

    /** The same set-up as the printed example: threads, grooves where the example has them, upright clearance, tension 55 N on every string. */
    private static BridgeInputs example() {
        return Bench.violin()
                .change()
                .clearanceConvention(ClearanceConvention.UPRIGHT)
                .grooveFraction(0)
                .strings(List.of(
                        FittedString.ofTension("G", 0.01, 55),
                        FittedString.ofTension("D", 0.01, 55),
                        FittedString.ofTension("A", 0.01, 55),
                        FittedString.ofTension("E", 0.01, 55)))
                .bridgeSpacing(new StringSpacing.Given(List.of(-16.75, -5.50, 5.95, 16.75)))
                .waist(new Waist(112, 15.5 - 4))
                .done();
    }

    /** Printed chords +11.62, -4.09, -19.81; the example's short cut moves both outer strings alike. */
    @Test
    void theChordsOfTheExample() {
        BowReading reading = open(example(), AT_THE_BRIDGE_mm);
        assertThat(reading.strings().get(1).findLimitBass().orElseThrow().deg()).isCloseTo(11.62, within(0.05));
        assertThat(reading.strings().get(1).findLimitTreble().orElseThrow().deg())
                .isCloseTo(-4.09, within(0.05));
        assertThat(reading.strings().get(2).findLimitTreble().orElseThrow().deg())
                .isCloseTo(-19.81, within(0.05));
    }

    /** Printed: margin left at the octave, bow at 30 mm: D 0.92, A 0.99; with one newton 0.47 and 0.55. */
    @Test
    void marginsAtTheOctaveOfTheExample() {
        assertThat(margin_mm(0, 164, "D")).isCloseTo(0.92, within(0.15));
        assertThat(margin_mm(0, 164, "A")).isCloseTo(0.99, within(0.15));
        assertThat(margin_mm(0, 164, "D") - margin_mm(1, 164, "D")).isCloseTo(0.92 - 0.47, within(0.01));
        assertThat(margin_mm(0, 164, "A") - margin_mm(1, 164, "A")).isCloseTo(0.99 - 0.55, within(0.01));
    }

    /** Printed: at two octaves D is already below its neighbours, -0.10. */
    @Test
    void atTwoOctavesTheDLiesBelowItsNeighbours() {
        assertThat(margin_mm(0, 82, "D")).isCloseTo(-0.10, within(0.15));
    }

    private static double margin_mm(double force_N, double stopped_mm, String name) {
        BowPlace place = new BowPlace(30, force_N, Map.of(name, stopped_mm));
        BowReading reading = (BowReading) BowClearance.at(Bench.shape(example()), place);
        return reading.strings().stream()
                .filter(string -> string.name().equals(name))
                .findFirst()
                .flatMap(BowedString::findMargin)
                .orElseThrow()
                .mm();
    }

    /** Printed: E side 45 degrees down to the edge. */
    @Test
    void theEdgeOfTheWaistStandsAtFortyFiveDegrees() {
        BowReading reading = open(example(), AT_THE_BRIDGE_mm);
        assertThat(reading.strings().get(3).findLimitTreble().orElseThrow().deg())
                .isCloseTo(-45, within(0.3));
    }

    /** docs/sources.md#leonid-bridge: D and A in seventh position touch no neighbour. */
    @Test
    void innerStringsInSeventhPositionAreFree() {
        BowPlace place = new BowPlace(30, 1, Map.of("D", 164.0, "A", 164.0));
        BowReading reading = (BowReading) BowClearance.at(Bench.shape(Bench.violinWithBody()), place);
        assertThat(reading.strings())
                .allSatisfy(string ->
                        assertThat(string.findClearAngle().orElseThrow().deg()).isPositive());
    }
}
