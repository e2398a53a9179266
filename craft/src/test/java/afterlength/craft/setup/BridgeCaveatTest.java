package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is unusual is answered, with the facts of a caveat beside it. */
class BridgeCaveatTest {
    private static List<Caveat> caveats(BridgeInputs inputs) {
        return Bench.shape(inputs).caveats();
    }

    @Test
    void aCommonViolinHasNone() {
        assertThat(caveats(Bench.violin())).isEmpty();
    }

    @Test
    void aLowProjectionBringsTheCausesInTheOrderTheyAreChecked() {
        assertThat(caveats(Bench.violin().change().projection_mm(25).done()))
                .contains(new Caveat.ProjectionLow(
                        Length.ofMm(25),
                        CommonSetup.VIOLIN.find(SetupQuantity.PROJECTION).orElseThrow(),
                        List.of(
                                HeightCause.STRING_TYPE,
                                HeightCause.BRIDGE_WARPED_OR_LEANING,
                                HeightCause.NUT_HEIGHT,
                                HeightCause.BOARD_SCOOP_RUTS_OR_WARP,
                                HeightCause.NECK_DROP,
                                HeightCause.ARCH_RISEN_OR_SUNK,
                                HeightCause.OPEN_SEAMS,
                                HeightCause.SEASON)));
    }

    @Test
    void noRangeIsStatedForALengthNobodyPrinted() {
        BridgeInputs small = Bench.violin().change().speakingLength_mm(285).done();
        assertThat(caveats(small)).containsExactly(new Caveat.NoCommonRange(Length.ofMm(285)));
    }

    @Test
    void aCrownThatDoesNotMatchTheBoardIsSeenAtTheInnerStrings() {
        assertThat(caveats(Bench.violin().withCrown(new RadiusCrown(25))))
                .anyMatch(caveat -> caveat instanceof Caveat.InnerClearanceOutsideOuter outside
                        && outside.strings().contains("D"));
    }

    @Test
    void severalInnerStringsOutsideAreSaidOnce() {
        assertThat(caveats(Bench.violin().withCrown(new RadiusCrown(20))))
                .filteredOn(Caveat.InnerClearanceOutsideOuter.class::isInstance)
                .hasSize(1)
                .allMatch(caveat ->
                        ((Caveat.InnerClearanceOutsideOuter) caveat).strings().equals(List.of("D", "A")));
    }

    @Test
    void aTightCrownIsUndercut() {
        assertThat(caveats(Bench.violin().withCrown(new RadiusCrown(16.82))))
                .anyMatch(Caveat.CrownUndercut.class::isInstance);
    }

    @Test
    void exchangedClearancesAndDeepGroovesAreNoticed() {
        BridgeInputs exchanged = Bench.violin()
                .change()
                .boardEndClearance_mm(new BassTreble(3.5, 5.5))
                .grooveFraction(0.8)
                .done();
        assertThat(caveats(exchanged))
                .contains(new Caveat.TrebleAboveBass(Length.ofMm(3.5), Length.ofMm(5.5)), new Caveat.DeepGroove(0.8));
    }
}
