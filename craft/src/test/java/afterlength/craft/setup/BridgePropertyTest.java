package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws every bridge obeys, on drawn instruments; a failure prints its seed. */
class BridgePropertyTest {
    private static final int CASES = 500;
    /** Rounding of doubles over a few hundred millimetres. */
    private static final double ROUNDING_mm = 1e-9;

    private interface Law {
        void holds(BridgeInputs inputs, BridgeShape shape, String seed);
    }

    private static void each(Law law) {
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeInputs inputs = Bench.drawn(new SplittableRandom(seed));
            law.holds(inputs, Bench.shape(inputs), "seed " + seed);
        }
    }

    @Test
    void aMirroredInstrumentGetsAMirroredBridge() {
        each((inputs, shape, seed) -> {
            BridgeShape mirror = Bench.shape(mirrored(inputs));
            int last = shape.strings().size() - 1;
            for (int i = 0; i <= last; i++) {
                SeatedString here = shape.strings().get(i);
                SeatedString there = mirror.strings().get(last - i);
                assertThat(there.bridgeY().mm())
                        .as(seed)
                        .isCloseTo(-here.bridgeY().mm(), within(ROUNDING_mm));
                assertThat(there.woodHeight().mm())
                        .as(seed)
                        .isCloseTo(here.woodHeight().mm(), within(ROUNDING_mm));
                assertThat(there.boardEndClearance().mm())
                        .as(seed)
                        .isCloseTo(here.boardEndClearance().mm(), within(ROUNDING_mm));
            }
            assertThat(mirror.centreHeight().mm())
                    .as(seed)
                    .isCloseTo(shape.centreHeight().mm(), within(ROUNDING_mm));
        });
    }

    private static BridgeInputs mirrored(BridgeInputs inputs) {
        List<FittedString> strings = new ArrayList<>(inputs.strings());
        Collections.reverse(strings);
        return inputs.change()
                .nutClearance_mm(mirrored(inputs.nutClearance_mm()))
                .boardEndClearance_mm(mirrored(inputs.boardEndClearance_mm()))
                .strings(strings)
                .done();
    }

    private static BassTreble mirrored(BassTreble pair) {
        return new BassTreble(/* bass_mm= */ pair.treble_mm(), /* treble_mm= */ pair.bass_mm());
    }

    @Test
    void outerStringsGetTheClearanceThatWasWanted() {
        each((inputs, shape, seed) -> {
            int last = shape.strings().size() - 1;
            assertThat(shape.strings().get(0).boardEndClearance().mm())
                    .as(seed)
                    .isCloseTo(inputs.boardEndClearance_mm().bass_mm(), within(ROUNDING_mm));
            assertThat(shape.strings().get(last).boardEndClearance().mm())
                    .as(seed)
                    .isCloseTo(inputs.boardEndClearance_mm().treble_mm(), within(ROUNDING_mm));
        });
    }

    @Test
    void innerClearancesComputedForwardGiveBackTheUndersides() {
        each((inputs, shape, seed) -> {
            StringLayout layout = new StringLayout(inputs);
            for (int i = 0; i < shape.strings().size(); i++) {
                SeatedString string = shape.strings().get(i);
                double forward_mm =
                        layout.bridgeUnderside_mm(i, string.boardEndClearance().mm());
                assertThat(forward_mm).as(seed).isCloseTo(string.underside().mm(), within(ROUNDING_mm));
            }
        });
    }

    @Test
    void squareClearanceIsTheShortestWayFromStringToBoard() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < CASES; i++) {
            double radius_mm = random.nextDouble(35, 70);
            double y_mm = random.nextDouble(-20, 20);
            double clearance_mm = random.nextDouble(0.5, 9);
            double z_mm = ClearanceConvention.SQUARE.underside_mm(radius_mm, y_mm, clearance_mm);
            double shortest_mm = Double.MAX_VALUE;
            for (double at_mm = -30; at_mm <= 30; at_mm += 0.001) {
                double away_mm = Math.hypot(at_mm - y_mm, BoardArc.height_mm(radius_mm, at_mm) - z_mm);
                shortest_mm = Math.min(shortest_mm, away_mm);
            }
            assertThat(clearance_mm).isCloseTo(shortest_mm, within(1e-6)); // the step of the search, squared
        }
    }

    @Test
    void onAFlatBoardSquareAndUprightAgree() {
        each((inputs, shape, seed) -> {
            BridgeInputs flat = inputs.change()
                    .board(Board.ofOneRadius(inputs.board().length_mm(), 1e8))
                    .done();
            BridgeShape square = Bench.shape(flat.change()
                    .clearanceConvention(ClearanceConvention.SQUARE)
                    .done());
            BridgeShape upright = Bench.shape(flat.change()
                    .clearanceConvention(ClearanceConvention.UPRIGHT)
                    .done());
            assertThat(square.centreHeight().mm())
                    .as(seed)
                    .isCloseTo(upright.centreHeight().mm(), within(1e-5)); // sagitta of 1e8 mm at 50 mm
        });
    }

    @Test
    void everyStringSitsOnTheCrown() {
        each((inputs, shape, seed) -> {
            CrossPoint centre = shape.findCrownCentre().orElseThrow();
            double radius_mm = ((RadiusCrown) inputs.crown()).radius_mm();
            for (SeatedString string : shape.strings()) {
                CrossPoint wood = new CrossPoint(
                        string.bridgeY().mm(), string.woodHeight().mm() - inputs.projection_mm());
                assertThat(wood.distanceTo_mm(centre)).as(seed).isCloseTo(radius_mm, within(ROUNDING_mm));
            }
            for (CrossPoint point : shape.crownPoints(33)) {
                assertThat(point.distanceTo_mm(centre)).as(seed).isCloseTo(radius_mm, within(ROUNDING_mm));
                assertThat(point.z_mm())
                        .as(seed)
                        .isLessThanOrEqualTo(shape.crown().highest().z_mm() + ROUNDING_mm);
            }
        });
    }

    @Test
    void gapsOrCentresAreEqualAsAsked() {
        each((inputs, shape, seed) -> {
            boolean gaps = inputs.bridgeSpacing() instanceof StringSpacing.ByGaps;
            double[] y_mm = inputs.bridgeSpacing().places_mm(inputs.strings());
            double first_mm = step_mm(inputs, y_mm, 1, gaps);
            for (int i = 2; i < y_mm.length; i++) {
                assertThat(step_mm(inputs, y_mm, i, gaps)).as(seed).isCloseTo(first_mm, within(ROUNDING_mm));
            }
            assertThat(y_mm[0]).as(seed).isCloseTo(-y_mm[y_mm.length - 1], within(ROUNDING_mm));
        });
    }

    private static double step_mm(BridgeInputs inputs, double[] y_mm, int i, boolean gaps) {
        List<FittedString> strings = inputs.strings();
        double taken_mm =
                gaps ? (strings.get(i - 1).diameter_mm() + strings.get(i).diameter_mm()) / 2 : 0;
        return y_mm[i] - y_mm[i - 1] - taken_mm;
    }

    @Test
    void aHigherProjectionLowersNothingButRaisesEveryHeightByTheSame() {
        each((inputs, shape, seed) -> {
            BridgeShape raised = Bench.shape(
                    inputs.change().projection_mm(inputs.projection_mm() + 1).done());
            assertThat(raised.centreHeight().mm() - shape.centreHeight().mm())
                    .as(seed)
                    .isCloseTo(1, within(ROUNDING_mm));
            assertThat(raised.highest().mm() - shape.highest().mm()).as(seed).isCloseTo(1, within(ROUNDING_mm));
        });
    }
}
