package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** docs/sources.md#setup-worked-example: arch and bridge rise 0.82 and 0.84, nut lowered -0.18 and -0.16. */
class OneMillimetrePublishedTest {
    private static OneMillimetre upright(BridgeInputs inputs) {
        return OneMillimetre.of(Bench.shape(
                inputs.change().clearanceConvention(ClearanceConvention.UPRIGHT).done()));
    }

    @Test
    void theViolinMovesAsPrinted() {
        OneMillimetre violin = upright(Bench.violin());
        assertThat(violin.archRises().bass_mm()).isCloseTo(0.82, within(0.005));
        assertThat(violin.nutLowered().treble_mm()).isCloseTo(-0.18, within(0.005));
    }

    @Test
    void theCelloMovesAsPrinted() {
        OneMillimetre cello = upright(Bench.cello());
        assertThat(cello.archRises().treble_mm()).isCloseTo(0.84, within(0.005));
        assertThat(cello.nutLowered().bass_mm()).isCloseTo(-0.16, within(0.005));
    }

    @Test
    void aNeckThatTurnsAnywhereGivesTheBoardEndItsShare() {
        // a second way: turn nut, board line and board end rigidly about the joint, leave the bridge, and look
        double joint_mm = 130;
        double turn = 1 / (328 - joint_mm);
        double nutRises_mm = joint_mm * turn;
        double endFalls_mm = (270 - joint_mm) * turn;
        double stringAtEndRises_mm = nutRises_mm * (1 - 270.0 / 328);
        assertThat(upright(Bench.violin()).projectionFalls().bass_mm())
                .isCloseTo(stringAtEndRises_mm + endFalls_mm, within(1e-6));
    }

    @Test
    void squareClearanceGrowsALittleLessUnderTheOuterStrings() {
        OneMillimetre square = OneMillimetre.of(Bench.shape(Bench.violin()));
        assertThat(square.archRises().bass_mm()).isBetween(0.75, 0.82);
    }
}
