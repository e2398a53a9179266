package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws of the load on a bridge. */
class BridgeLoadPropertyTest {
    private static final TailEnd TAIL = new TailEnd(55, 21, 20, 7);

    private static BridgeLoad load(BridgeShape shape, TailEnd tail) {
        LoadAnswer answer = BridgeLoad.of(shape, tail, 15);
        if (answer instanceof BridgeLoad load) {
            return load;
        }
        throw new AssertionError(answer.toString());
    }

    @Test
    void theThrustIsTheChordFormulaInSpace() {
        for (StringThrust string : load(Bench.shape(Bench.violin()), TAIL).strings()) {
            assertThat(string.resultant().newton())
                    .isCloseTo(
                            StringMechanics.downforce_N(
                                    string.tension().newton(),
                                    string.stringAngle().deg()),
                            within(1e-9));
            assertThat(string.resultant().newton())
                    .isCloseTo(
                            Math.hypot(
                                    string.downforce().newton()
                                            / Math.cos(string.lean().rad()),
                                    string.sideways().newton()),
                            within(1e-9));
        }
    }

    @Test
    void withoutSplayTheSideViewIsAllThereIs() {
        BridgeInputs straight = Bench.violin()
                .change()
                .nutSpacing(new StringSpacing.ByCentres(33.5))
                .done();
        BridgeShape shape = Bench.shape(straight);
        for (StringThrust string : load(shape, new TailEnd(55, 21, 33.5, 7)).strings()) {
            assertThat(string.sideways().newton()).isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void leanHalvesTheDifferenceOfTheSlopes() {
        BridgeShape shape = Bench.shape(Bench.violin());
        SeatedString d = shape.strings().get(1);
        double rise_mm = d.underside().mm() - d.nutUnderside().mm();
        double neck_deg = 7 + Math.toDegrees(Math.atan2(rise_mm, 328));
        StringThrust thrust = load(shape, TAIL).strings().get(1);
        double tail_deg = 180 - neck_deg - thrust.stringAngle().deg();
        // splay of an inner string bends the angle in space a little more than in the side view
        assertThat(thrust.lean().deg()).isCloseTo(StringMechanics.lean_deg(neck_deg, tail_deg), within(0.1));
    }

    /** docs/sources.md#bishopp-in-hart takes 1/150 off the outer strings for splay, 1/300 off the inner ones. */
    @Test
    void splayTakesLessThanAHundredth() {
        BridgeShape shape = Bench.shape(Bench.violin());
        StringThrust splayed = load(shape, TAIL).strings().get(0);
        StringThrust straight =
                load(shape, new TailEnd(55, 21, 33.5, 7)).strings().get(0);
        double lost = 1 - splayed.downforce().newton() / straight.downforce().newton();
        assertThat(lost).isBetween(0.002, 0.01);
    }

    @Test
    void theFeetCarryTheWholeLoadAndAMirrorExchangesThem() {
        for (long seed = 1; seed <= 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BridgeInputs inputs = Bench.drawn(random);
            double height_mm = inputs.projection_mm() * random.nextDouble(0.4, 0.8);
            TailEnd tail = new TailEnd(inputs.speakingLength_mm() / 6, height_mm, 20, random.nextDouble(5, 9));
            BridgeLoad load = load(Bench.shape(inputs), tail);
            assertThat(load.onBassFoot().newton() + load.onTrebleFoot().newton())
                    .as("seed " + seed)
                    .isCloseTo(load.totalDownforce().newton(), within(1e-9));
            BridgeLoad mirror = load(Bench.shape(mirrored(inputs)), tail);
            assertThat(mirror.onBassFoot().newton())
                    .as("seed " + seed)
                    .isCloseTo(load.onTrebleFoot().newton(), within(1e-8));
        }
    }

    private static BridgeInputs mirrored(BridgeInputs inputs) {
        List<FittedString> strings = new ArrayList<>(inputs.strings());
        Collections.reverse(strings);
        BassTreble nut = inputs.nutClearance_mm();
        BassTreble end = inputs.boardEndClearance_mm();
        return inputs.change()
                .nutClearance_mm(new BassTreble(/* bass_mm= */ nut.treble_mm(), /* treble_mm= */ nut.bass_mm()))
                .boardEndClearance_mm(new BassTreble(/* bass_mm= */ end.treble_mm(), /* treble_mm= */ end.bass_mm()))
                .strings(strings)
                .done();
    }

    @Test
    void withoutATensionThereIsNoLoad() {
        List<FittedString> strings = new ArrayList<>(Bench.violin().strings());
        strings.set(2, FittedString.ofDiameter("A", 0.6));
        BridgeShape shape = Bench.shape(Bench.violin().change().strings(strings).done());
        assertThat(((LoadRefused) BridgeLoad.of(shape, TAIL, 15)).problems())
                .containsExactly(new Problem(
                        "/strings/2/tension_N",
                        null,
                        "The tension of string A is not known; the load needs the tension of every string. Give it, or the linear"
                                + " density and the note."));
    }
}
