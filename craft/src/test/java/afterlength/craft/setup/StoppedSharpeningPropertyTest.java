package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Sharpening of a stopped note on a bridge that was drawn. */
class StoppedSharpeningPropertyTest {
    private static final double STIFFNESS_N = StoppedSharpening.solidStiffness_N(0.26, 200);

    private static double atOctave_cents(BridgeInputs inputs) {
        return StoppedSharpening.atMost_cents(Bench.shape(inputs), 3, 164, STIFFNESS_N, 75);
    }

    @Test
    void theFingerPressesThroughClearanceAndScoop() {
        BridgeShape shape = Bench.shape(Bench.violinWithBody());
        SeatedString e = shape.strings().get(3);
        double string_mm = (e.nutUnderside().mm() + e.underside().mm()) / 2;
        double y_mm = (e.nutY().mm() + e.bridgeY().mm()) / 2;
        double parabola = 4 * 164.0 * (270 - 164) / (270 * 270);
        double board_mm = Math.sqrt(42 * 42 - y_mm * y_mm) - 42 - 0.25 * parabola;
        double expected_cents = StoppedSharpening.atMost_cents(328, 164, string_mm - board_mm, STIFFNESS_N, 75);
        assertThat(atOctave_cents(Bench.violinWithBody())).isCloseTo(expected_cents, within(1e-9));
    }

    @Test
    void moreClearanceMoreScoopAndLessTensionSharpen() {
        BridgeInputs violin = Bench.violinWithBody();
        double usual_cents = atOctave_cents(violin);
        BridgeInputs high =
                violin.change().boardEndClearance_mm(new BassTreble(5.5, 4.5)).done();
        BridgeInputs unscooped =
                violin.change().board(Board.ofOneRadius(270, 42)).done();
        assertThat(atOctave_cents(high)).isGreaterThan(usual_cents);
        assertThat(atOctave_cents(unscooped)).isLessThan(usual_cents);
        assertThat(StoppedSharpening.atMost_cents(Bench.shape(violin), 3, 164, STIFFNESS_N, 60))
                .isGreaterThan(usual_cents);
    }
}
