package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * docs/sources.md#setup-worked-example. That example takes a short cut: it carries the board surface of the end on to the bridge
 * and lets an upright clearance grow evenly from nut to bridge. The program draws the straight string instead. Two things set
 * them apart, and both are computed here on their own:
 *
 * <ul>
 *   <li>under a string that spreads outwards the surface falls away at first slowly, then fast; the straight string does not
 *       follow (0.18 mm at the outer strings of the violin, 0.23 mm of the cello);
 *   <li>a rule standing square on the board leans outwards, so that the string stands higher over the board line than the rule
 *       says (0.43 mm more at G, 0.28 mm at E; nothing when clearance is measured upright).
 * </ul>
 */
class WorkedExamplePublishedTest {
    /** The short cut counts z from the belly, takes the string as a thread, and its groove as nothing. */
    private record ShortCut(double bassHeight_mm, double trebleHeight_mm, CrownArc crown) {
        private static ShortCut of(BridgeInputs inputs, double bridgeSpacing_mm, double radius_mm) {
            double bass_mm = height_mm(
                    inputs,
                    bridgeSpacing_mm,
                    inputs.nutClearance_mm().bass_mm(),
                    inputs.boardEndClearance_mm().bass_mm());
            double treble_mm = height_mm(
                    inputs,
                    bridgeSpacing_mm,
                    inputs.nutClearance_mm().treble_mm(),
                    inputs.boardEndClearance_mm().treble_mm());
            CrossPoint bass = new CrossPoint(-bridgeSpacing_mm / 2, bass_mm);
            CrossPoint treble = new CrossPoint(bridgeSpacing_mm / 2, treble_mm);
            return new ShortCut(bass_mm, treble_mm, CrownArc.through(bass, treble, radius_mm));
        }

        private static double height_mm(BridgeInputs inputs, double spacing_mm, double nut_mm, double end_mm) {
            double grown_mm = nut_mm
                    + (end_mm - nut_mm)
                            * inputs.speakingLength_mm()
                            / inputs.board().length_mm();
            double sag_mm = -BoardArc.height_mm(inputs.board().radius_mm(), spacing_mm / 2);
            return inputs.projection_mm() - sag_mm + grown_mm;
        }
    }

    private static final ShortCut VIOLIN = ShortCut.of(Bench.violin(), 33.5, 42);
    /** Printed to three decimals. */
    private static final double PRINTED_mm = 0.0006;
    /** What the short cut leaves out when clearance is measured upright, see above. */
    private static final double SHORT_CUT_mm = 0.25;

    @Test
    void theShortCutGivesThePrintedPointsOfTheViolin() {
        assertThat(VIOLIN.bassHeight_mm()).isCloseTo(30.100, within(PRINTED_mm));
        assertThat(VIOLIN.trebleHeight_mm()).isCloseTo(27.703, within(PRINTED_mm));
        assertThat(VIOLIN.crown().centre().y_mm()).isCloseTo(-2.748, within(PRINTED_mm));
        assertThat(VIOLIN.crown().centre().z_mm()).isCloseTo(-9.497, within(PRINTED_mm));
        assertThat(VIOLIN.crown().height_mm(0)).isCloseTo(32.41, within(0.006));
        assertThat(VIOLIN.crown().height_mm(-5.50)).isCloseTo(32.412, within(0.001)); // y is rounded too
        assertThat(VIOLIN.crown().height_mm(5.95)).isCloseTo(31.593, within(0.001));
    }

    @Test
    void theShortCutGivesThePrintedCentreHeightsOfTheCello() {
        assertThat(ShortCut.of(Bench.cello(), 47, 62).crown().height_mm(0)).isCloseTo(88.94, within(0.006));
        BridgeInputs steel = Bench.cello()
                .change()
                .boardEndClearance_mm(new BassTreble(6.5, 4.0))
                .done();
        assertThat(ShortCut.of(steel, 47, 62).crown().height_mm(0)).isCloseTo(87.15, within(0.006));
    }

    @Test
    void theStraightStringOfTheProgramStaysWithinTheBandOfTheShortCut() {
        BridgeShape shape = Bench.shape(upright(Bench.violin()));
        assertThat(shape.strings().get(0).woodHeight().mm()).isCloseTo(30.100, within(SHORT_CUT_mm));
        assertThat(shape.strings().get(3).woodHeight().mm()).isCloseTo(27.703, within(SHORT_CUT_mm));
        assertThat(shape.centreHeight().mm()).isCloseTo(32.41, within(SHORT_CUT_mm));
        assertThat(shape.strings().get(1).boardEndClearance().mm()).isCloseTo(4.82, within(SHORT_CUT_mm));
        assertThat(shape.strings().get(2).boardEndClearance().mm()).isCloseTo(4.19, within(SHORT_CUT_mm));
    }

    @Test
    void theStraightStringOfTheCelloStaysWithinTheBandToo() {
        BridgeShape cello = Bench.shape(upright(Bench.cello()));
        assertThat(cello.centreHeight().mm()).isCloseTo(88.94, within(SHORT_CUT_mm));
        assertThat(cello.strings().get(1).boardEndClearance().mm()).isCloseTo(7.16, within(SHORT_CUT_mm));
        assertThat(cello.strings().get(2).boardEndClearance().mm()).isCloseTo(6.36, within(SHORT_CUT_mm));
    }

    private static BridgeInputs upright(BridgeInputs inputs) {
        return inputs.change()
                .grooveFraction(0)
                .clearanceConvention(ClearanceConvention.UPRIGHT)
                .done();
    }

    @Test
    void theDifferenceIsTheSurfaceFallingAwayAndTheRuleLeaning() {
        double lever = 328.0 / 270;
        double endY_mm = 8.25 + 8.5 / lever;
        double falling_mm = BoardArc.height_mm(42, 8.25) * (1 - lever)
                + BoardArc.height_mm(42, endY_mm) * lever
                - BoardArc.height_mm(42, 16.75);
        assertThat(falling_mm).isCloseTo(0.18, within(0.005));
        BridgeInputs square = Bench.violin().change().grooveFraction(0).done();
        double leaningBass_mm = leaning_mm(8.25, 0.45) * (1 - lever) + leaning_mm(endY_mm, 5.5) * lever;
        double leaningTreble_mm = leaning_mm(8.25, 0.30) * (1 - lever) + leaning_mm(endY_mm, 3.5) * lever;
        assertThat(leaningBass_mm).isCloseTo(0.425, within(0.005));
        assertThat(leaningTreble_mm).isCloseTo(0.284, within(0.005));
        SeatedString g = Bench.shape(square).strings().get(0);
        SeatedString e = Bench.shape(square).strings().get(3);
        assertThat(g.woodHeight().mm() - 30.100).isCloseTo(falling_mm + leaningBass_mm, within(PRINTED_mm));
        assertThat(e.woodHeight().mm() - 27.703).isCloseTo(falling_mm + leaningTreble_mm, within(PRINTED_mm));
    }

    /** How much higher a string stands over the board line when its clearance was read square instead of upright. */
    private static double leaning_mm(double y_mm, double clearance_mm) {
        return Math.sqrt((42 + clearance_mm) * (42 + clearance_mm) - y_mm * y_mm)
                - Math.sqrt(42 * 42 - y_mm * y_mm)
                - clearance_mm;
    }
}
