package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Angle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What holds under the bow on any instrument. */
class BowPropertyTest {
    private static final int CASES = 500;
    /** So near the bridge that the strings' fall towards the nut does not show. */
    private static final double AT_THE_BRIDGE_mm = 1e-7;
    /** The bow is not quite at the bridge, and tangents are told apart by an arc sine. */
    private static final double CLOSE = 1e-6;

    private static BowReading read(BridgeInputs inputs, BowPlace place) {
        return (BowReading) BowClearance.at(Bench.shape(inputs), place);
    }

    /** 2·asin(s/2R) between neighbouring tangents, s²/2R over the neighbours' chord: exact for equal strings and chords. */
    @Test
    void equalChordsGiveEqualStepsAndMarginsOnAnyCrown() {
        for (long seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double radius_mm = random.nextDouble(30, 80);
            double chord_mm = radius_mm * random.nextDouble(0.15, 0.35);
            BowReading reading = read(
                    equalChords(random.nextInt(3, 7), radius_mm, chord_mm),
                    BowPlace.onOpenStrings(AT_THE_BRIDGE_mm, 0));
            double step_deg = Math.toDegrees(2 * Math.asin(chord_mm / (2 * radius_mm)));
            for (BowedString inner :
                    reading.strings().subList(1, reading.strings().size() - 1)) {
                assertThat(inner.findClearAngle().orElseThrow().deg())
                        .as("seed " + seed)
                        .isCloseTo(step_deg, within(CLOSE));
                assertThat(inner.findMargin().orElseThrow().mm())
                        .as("seed " + seed)
                        .isCloseTo(chord_mm * chord_mm / (2 * radius_mm), within(CLOSE));
            }
        }
    }

    /** Equal strings on equal chords of an arc, as high on the treble side as on the bass side, over a nearly flat board. */
    private static BridgeInputs equalChords(int count, double radius_mm, double chord_mm) {
        double step_rad = 2 * Math.asin(chord_mm / (2 * radius_mm));
        List<Double> y_mm = IntStream.range(0, count)
                .mapToObj(i -> radius_mm * Math.sin((i - (count - 1) / 2.0) * step_rad))
                .toList();
        List<FittedString> strings = IntStream.range(0, count)
                .mapToObj(i -> FittedString.ofTension("string " + i, 0.7, 50))
                .toList();
        return Bench.violin()
                .change()
                .board(Board.ofOneRadius(270, 200))
                .strings(strings)
                .nutSpacing(new StringSpacing.ByCentres(count * 4.0))
                .bridgeSpacing(new StringSpacing.Given(y_mm))
                .nutClearance_mm(new BassTreble(0.4, 0.4))
                .boardEndClearance_mm(new BassTreble(4.5, 4.5))
                .projection_mm(60)
                .crown(new RadiusCrown(radius_mm))
                .done();
    }

    @Test
    void aMirroredInstrumentHasMirroredLimits() {
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeInputs inputs = Bench.drawn(new SplittableRandom(seed));
            BowPlace place = BowPlace.onOpenStrings(inputs.speakingLength_mm() / 16, 1);
            List<BowedString> here = read(inputs, place).strings();
            List<BowedString> there = read(mirrored(inputs), place).strings();
            for (int i = 0; i < here.size(); i++) {
                BowedString one = here.get(i);
                BowedString other = there.get(there.size() - 1 - i);
                same(
                        one.findLimitBass().map(Angle::deg),
                        other.findLimitTreble().map(limit -> -limit.deg()),
                        seed);
                same(
                        one.findLimitTreble().map(Angle::deg),
                        other.findLimitBass().map(limit -> -limit.deg()),
                        seed);
                same(
                        one.findMargin().map(margin -> margin.mm()),
                        other.findMargin().map(margin -> margin.mm()),
                        seed);
            }
        }
    }

    private static BridgeInputs mirrored(BridgeInputs inputs) {
        List<FittedString> strings = new ArrayList<>(inputs.strings());
        Collections.reverse(strings);
        return inputs.change()
                .strings(strings)
                .nutClearance_mm(exchanged(inputs.nutClearance_mm()))
                .boardEndClearance_mm(exchanged(inputs.boardEndClearance_mm()))
                .done();
    }

    private static BassTreble exchanged(BassTreble pair) {
        return new BassTreble(/* bass_mm= */ pair.treble_mm(), /* treble_mm= */ pair.bass_mm());
    }

    private static void same(Optional<Double> one, Optional<Double> other, long seed) {
        assertThat(one.isPresent()).as("seed " + seed).isEqualTo(other.isPresent());
        one.ifPresent(value -> assertThat(value).as("seed " + seed).isCloseTo(other.orElseThrow(), within(CLOSE)));
    }

    /** Room is lost by pressing harder, by a deeper scoop and by a higher neighbour; never won. */
    @Test
    void pressingAndScoopOnlyTakeRoomAway() {
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeInputs inputs = Bench.drawn(new SplittableRandom(seed));
            double length_mm = inputs.speakingLength_mm();
            Map<String, Double> octave = Map.of(inputs.strings().get(1).name(), length_mm / 2);
            Function<Double, BowPlace> pressed = force_N -> new BowPlace(length_mm / 16, force_N, octave);
            double light_deg = opening_deg(inputs, pressed.apply(0.0));
            double firm_deg = opening_deg(inputs, pressed.apply(1.0));
            BridgeInputs scooped = inputs.change()
                    .board(inputs.board().withScoop(new BassTreble(1.2, 0.8)))
                    .done();
            assertThat(firm_deg).as("seed " + seed).isLessThan(light_deg);
            assertThat(opening_deg(scooped, pressed.apply(0.0)))
                    .as("seed " + seed)
                    .isLessThan(light_deg);
            assertThat(opening_deg(inputs, BowPlace.onOpenStrings(length_mm / 16, 0)))
                    .as("seed " + seed)
                    .isGreaterThan(light_deg);
        }
    }

    private static double opening_deg(BridgeInputs inputs, BowPlace place) {
        return read(inputs, place).strings().get(1).findOpening_deg().orElseThrow();
    }
}
