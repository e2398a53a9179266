package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked rows: a belly of 208 mm at 20 °C, reckoned from read coefficients. Tolerances are half a last digit. */
class HeldPlatePublishedTest {
    @ParameterizedTest
    @CsvSource({"60, 40, 1.009", "60, 30, 1.481", "50, 35, 0.711", "50, 30, 0.949", "45, 65, 1.081"})
    void theUpperBoundOfTheGapIsTheFreeMovement(double from_pct, double to_pct, double mm) {
        HeldPlate plate = belly(from_pct, to_pct, Share.UNKNOWN, Share.HALF_TO_WHOLE);
        assertThat(plate.movement_mm().high()).isCloseTo(mm, within(0.0006));
        assertThat(plate.movement_mm().low()).isZero();
        assertThat(plate.closing()).isEqualTo(to_pct > from_pct);
    }

    /** Elastic stress with the handbook's 0.849 GPa lies between the two measured stiffnesses: 4.12 MPa for 60 → 40 %. */
    @Test
    void theStressBandHoldsTheHandbookValue() {
        Band stress_MPa =
                belly(60, 40, Share.UNKNOWN, new Share(1, 1)).stress_MPa().orElseThrow();
        assertThat(stress_MPa.low()).isLessThan(4.12);
        assertThat(stress_MPa.high()).isGreaterThan(4.12);
        assertThat(DryingLimit.STIFFNESS_GPA).isCloseTo(0.849, within(0.0006));
    }

    @Test
    void stressIsKnownForQuarteredSpruceOnly() {
        assertThat(HeldPlate.of(
                                Length.ofMm(206),
                                Wood.SUGAR_MAPLE,
                                Cut.QUARTER,
                                moisture(60),
                                moisture(40),
                                Share.UNKNOWN,
                                Share.UNKNOWN)
                        .stress_MPa())
                .isEmpty();
    }

    /** Strength: a loss of 1.91 %, from 50 to 37.6 %. Strain: 2.70 %; from 50, 55, 45 to 32.4, 37.9, 27.5 %. */
    @ParameterizedTest
    @CsvSource({"50, 37.6, 32.4", "55, , 37.9", "45, , 27.5"})
    void twoLimitsMakeABand(double from_pct, Double strength_pct, double strain_pct) {
        assertThat(DryingLimit.lossByStrength_pct()).isCloseTo(1.91, within(0.005));
        assertThat(DryingLimit.lossByStrain_pct()).isCloseTo(2.70, within(0.005));
        DryingLimit limit = DryingLimit.from(moisture(from_pct), Temperature.ofCelsius(20));
        assertThat(limit.byStrain().orElseThrow().pct()).isCloseTo(strain_pct, within(0.06));
        if (strength_pct != null) {
            assertThat(limit.byStrength().orElseThrow().pct()).isCloseTo(strength_pct, within(0.06));
        }
    }

    @Test
    void noLimitWhereTheCurveEnds() {
        assertThat(DryingLimit.from(MoistureContent.ofPct(2), Temperature.ofCelsius(20)))
                .isEqualTo(new DryingLimit(java.util.Optional.empty(), java.util.Optional.empty()));
    }

    /** The question of the bench: will this crack close by itself if the room goes from 38 to 50 %? */
    @Test
    void closingHasFourAnswers() {
        HeldPlate damper = belly(38, 50, new Share(0.3, 1), Share.UNKNOWN);
        assertThat(CrackClosing.of(Length.ofMm(0.1), damper)).isEqualTo(new CrackClosing.Closes(damper));
        assertThat(CrackClosing.of(Length.ofMm(0.4), damper)).isEqualTo(new CrackClosing.MayClose(damper));
        assertThat(CrackClosing.of(Length.ofMm(0.9), damper)).isEqualTo(new CrackClosing.StaysOpen(damper));
        HeldPlate drier = belly(50, 38, Share.UNKNOWN, Share.UNKNOWN);
        assertThat(CrackClosing.of(Length.ofMm(0.1), drier)).isEqualTo(new CrackClosing.Widens(drier));
    }

    @Test
    void everyBandCarriesItsCaveat() {
        assertThat(belly(60, 40, Share.UNKNOWN, Share.UNKNOWN).caveats())
                .contains(new WoodCaveat.RestraintUnknown())
                .doesNotContain(new WoodCaveat.FreePlate());
    }

    private static HeldPlate belly(double from_pct, double to_pct, Share reaching, Share left) {
        return HeldPlate.of(
                Length.ofMm(208), Wood.SITKA_SPRUCE, Cut.QUARTER, moisture(from_pct), moisture(to_pct), reaching, left);
    }

    private static MoistureContent moisture(double rh_pct) {
        return Known.moisture(EquilibriumMoisture.of(Temperature.ofCelsius(20), RelativeHumidity.ofPct(rh_pct)))
                .moisture();
    }
}
