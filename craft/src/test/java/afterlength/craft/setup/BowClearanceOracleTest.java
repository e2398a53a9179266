package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Length;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The formulas of the bow against {@link BowOracle}: stopped, pressed, scooped, square and upright, with and without a body. */
class BowClearanceOracleTest {
    private static final int CASES = 2000;
    /** What the bench could never see, and far above what halving leaves. */
    private static final double CLOSE_deg = 0.01;

    private static final double CLOSE_mm = 0.002;

    @Test
    void formulasAndSearchAgree() {
        for (long seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BridgeInputs inputs = scooped(Bench.drawn(random), random);
            BridgeShape shape = Bench.shape(inputs);
            compare(shape, new BowOracle(inputs), place(inputs, random), "seed " + seed);
        }
    }

    /** The draws above hold every kind of question often, so that the agreement says something about each. */
    @Test
    void everyKindOfQuestionIsDrawnOften() {
        Map<String, Integer> kinds = new HashMap<>();
        for (long seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BridgeInputs inputs = scooped(Bench.drawn(random), random);
            BowPlace place = place(inputs, random);
            String kind = inputs.clearanceConvention()
                    + (inputs.board().scoop_mm() == null ? ", no scoop" : ", scoop")
                    + (place.stoppedAt_mm().isEmpty() ? ", open" : ", stopped")
                    + (place.force_N() == 0 ? ", light" : ", pressed");
            kinds.merge(kind, 1, Integer::sum);
            kinds.merge(inputs.strings().size() + " strings", 1, Integer::sum);
            kinds.merge(inputs.waist() == null ? "no waist" : "waist", 1, Integer::sum);
        }
        assertThat(kinds).hasSize(16 + 4 + 2);
        assertThat(kinds.get("SQUARE, scoop, stopped, pressed")).isGreaterThan(400);
        assertThat(kinds.get("UPRIGHT, scoop, stopped, pressed")).isGreaterThan(400);
    }

    private static BridgeInputs scooped(BridgeInputs inputs, SplittableRandom random) {
        BassTreble scoop = new BassTreble(random.nextDouble(0, 2), random.nextDouble(0, 1.5));
        BridgeInputs scooped = random.nextInt(4) == 0
                ? inputs
                : inputs.change().board(inputs.board().withScoop(scoop)).done();
        return random.nextInt(4) == 0 ? scooped.change().waist(null).done() : scooped;
    }

    private static BowPlace place(BridgeInputs inputs, SplittableRandom random) {
        double length_mm = inputs.speakingLength_mm();
        double boardEnd_mm = length_mm - inputs.board().length_mm();
        Map<String, Double> stops = new HashMap<>();
        for (FittedString string : inputs.strings()) {
            if (random.nextBoolean()) {
                stops.put(string.name(), random.nextDouble(boardEnd_mm, length_mm));
            }
        }
        double force_N = random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 3);
        return new BowPlace(length_mm * random.nextDouble(0.02, 0.12), force_N, stops);
    }

    private static void compare(BridgeShape shape, BowOracle oracle, BowPlace place, String seed) {
        BowReading reading = (BowReading) BowClearance.at(shape, place);
        for (int i = 0; i < reading.strings().size(); i++) {
            BowedString string = reading.strings().get(i);
            BowOracle.Found found = oracle.find(i, place);
            assertThat(shape.strings().get(i).underside().mm())
                    .as(seed)
                    .isCloseTo(oracle.bridgeUnderside(i), within(CLOSE_mm));
            same(string.findLimitBass().map(Angle::deg).orElse(Double.NaN), found.bass_deg(), CLOSE_deg, seed);
            same(string.findLimitTreble().map(Angle::deg).orElse(Double.NaN), found.treble_deg(), CLOSE_deg, seed);
            double clear_deg = Math.max(0, found.bass_deg() - found.treble_deg());
            same(string.findClearAngle().map(Angle::deg).orElse(Double.NaN), clear_deg, CLOSE_deg, seed);
            if (i > 0 && i < reading.strings().size() - 1) {
                same(string.findMargin().map(Length::mm).orElse(Double.NaN), found.margin_mm(), CLOSE_mm, seed);
            } else {
                assertThat(string.findMargin()).as(seed).isEmpty();
            }
        }
    }

    private static void same(double computed, double searched, double close, String seed) {
        if (Double.isNaN(searched)) {
            assertThat(computed).as(seed).isNaN();
        } else {
            assertThat(computed).as(seed).isCloseTo(searched, within(close));
        }
    }

    @Test
    void atItsMeetingForceAStringHasNoRoomLeft() {
        for (long seed = 1; seed <= 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BridgeInputs inputs = scooped(Bench.drawn(random), random);
            BridgeShape shape = Bench.shape(inputs);
            BowPlace place = place(inputs, random);
            BowReading reading = (BowReading) BowClearance.at(shape, place);
            BowOracle oracle = new BowOracle(inputs);
            for (int i = 0; i < reading.strings().size(); i++) {
                double meets_N = reading.strings()
                        .get(i)
                        .findForceMeetingNeighbours()
                        .map(force -> force.newton())
                        .orElse(0.0);
                if (meets_N > 0) {
                    BowOracle.Found at =
                            oracle.find(i, new BowPlace(place.distance_mm(), meets_N, place.stoppedAt_mm()));
                    assertThat(at.bass_deg() - at.treble_deg())
                            .as("seed " + seed)
                            .isCloseTo(0, within(CLOSE_deg));
                }
            }
        }
    }
}
