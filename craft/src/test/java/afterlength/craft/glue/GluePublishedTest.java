package afterlength.craft.glue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed and worked rows; a tolerance is half a unit of the last printed digit unless said otherwise. */
class GluePublishedTest {
    /** docs/sources.md#thin-film: exp(τ)·erfc(√τ), six decimals. */
    @ParameterizedTest
    @CsvSource({
        "0, 1",
        "0.01, 0.896457",
        "0.1, 0.723578",
        "0.25, 0.615690",
        "0.5, 0.523157",
        "1, 0.427584",
        "2, 0.336204",
        "4, 0.255396",
        "9, 0.179001",
        "25, 0.110705",
        "100, 0.056141"
    })
    void theta(double tau, double printed) {
        assertThat(HalfSpace.excess(tau)).isCloseTo(printed, within(0.0000005));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.59148, 0.000005", "0.3, 2.69154, 0.000005", "0.2, 7.03743, 0.000005", "0.1, 30.8534, 0.00005"})
    void thetaBackwards(double theta, double tau, double lastDigit) {
        assertThat(HalfSpace.tauWhenLeft(theta)).isCloseTo(tau, within(lastDigit));
    }

    /** docs/sources.md#choi-okos at 50 °C. */
    @ParameterizedTest
    @CsvSource({"1, 1124, 3093, 0.5", "2, 1074.8, 3435.0, 0.05", "3, 1052, 3606, 0.5"})
    void choiOkosRows(double waterForOne, double density, double heat, double lastDigit) {
        GlueLiquid glue = GlueLiquid.of(1 / waterForOne);
        assertThat(glue.density_kg_m3()).isCloseTo(density, within(lastDigit));
        assertThat(glue.heat_J_kgK()).isCloseTo(heat, within(lastDigit));
        if (waterForOne == 2) {
            assertThat(glue.conductivity_W_mK()).isCloseTo(0.5296, within(0.00005));
        }
    }

    /** Worked rows: seconds from 60 to 32 °C, spruce and maple; printed to one decimal, some to the second. */
    @ParameterizedTest
    @CsvSource({
        "15, 0.1, 2.9, 1.0, 0.06", "15, 0.2, 11.4, 4.0, 0.06", "15, 0.3, 25.6, 9.1, 0.1",
        "20, 0.1, 5.3, 1.9, 0.06", "20, 0.2, 21.2, 7.5, 0.06", "20, 0.3, 47.7, 16.8, 0.1",
        "25, 0.1, 13.8, 4.9, 0.06", "25, 0.2, 55.4, 19.6, 0.1", "25, 0.3, 125, 44, 0.6",
        "30, 0.1, 139, 49, 0.6"
    })
    void secondsToTheGelPoint(double wood_C, double film_mm, double spruce_s, double maple_s, double lastDigit) {
        assertThat(typical_s(WoodHeat.SPRUCE, wood_C, film_mm)).isCloseTo(spruce_s, within(lastDigit));
        assertThat(typical_s(WoodHeat.MAPLE, wood_C, film_mm)).isCloseTo(maple_s, within(lastDigit));
    }

    private static double typical_s(WoodHeat wood, double wood_C, double film_mm) {
        return Joints.known(Joints.thick(wood, wood_C, film_mm))
                .seconds()
                .typical_s()
                .orElseThrow();
    }

    /** docs/sources.md#glue-grades. */
    @ParameterizedTest
    @CsvSource({"192, 178, 206, 72", "251, 237, 266, 92", "315, 299, 330, 111"})
    void grades(double strength_g, int least_g, int most_g, int viscosity_mP) {
        GlueGrade grade = GlueGrade.find(strength_g, BloomScale.GLUE).orElseThrow();
        assertThat(grade.least_g()).isEqualTo(least_g);
        assertThat(grade.most_g()).isEqualTo(most_g);
        assertThat(grade.viscosity_mP()).isEqualTo(viscosity_mP);
    }

    /** The two scales are not the same: a gelatine figure has no glue grade. */
    @Test
    void theOtherScaleHasNoGrade() {
        assertThat(GlueGrade.find(192, BloomScale.GELATINE)).isEmpty();
        assertThat(GlueGrade.find(600, BloomScale.GLUE)).isEmpty();
        assertThat(GlueGrade.list()).hasSize(18);
    }

    /** 60 g at 1 : 1.8 of glue with 12 % moisture: 21.43 g, 38.57 g, 31.43 % true solids. */
    @Test
    void batch() {
        Batch batch = Batch.of(60, 1.8, 12);
        assertThat(batch.dry_g()).isCloseTo(21.43, within(0.005));
        assertThat(batch.water_g()).isCloseTo(38.57, within(0.005));
        assertThat(batch.trueSolids_pct()).isCloseTo(31.43, within(0.005));
        assertThat(batch.total_g()).isCloseTo(60, within(1e-12));
    }

    /** docs/sources.md#taggart-1913 and others: aim 60, warn above 63, refuse above 65.6 °C. */
    @ParameterizedTest
    @CsvSource({"40, COOL", "48.9, GOOD", "60, GOOD", "63, GOOD", "63.1, HOT", "65.6, HOT", "65.7, TOO_HOT"})
    void potHeat(double pot_C, PotHeat expected) {
        assertThat(PotHeat.of(Temperature.ofCelsius(pot_C))).isEqualTo(expected);
    }
}
