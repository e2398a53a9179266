package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import org.junit.jupiter.api.Test;

/** A second, quite different curve for the same thing shows how far ours may be trusted: docs/sources.md#wood-handbook-2021, equation 4-6. */
class EquilibriumMoistureOracleTest {
    @Test
    void theOtherCurveIsTheOneThatWasRead() {
        assertThat(otherCurve_pct(20, 0.50)).isCloseTo(9.471, within(0.0005)); // last digit given
    }

    @Test
    void theTwoCurvesLieApartByTheUncertaintyThatIsStated() {
        double largest_pct = 0;
        for (int rh_pct = 10; rh_pct <= 90; rh_pct++) {
            EquilibriumMoisture.Value ours =
                    Known.moisture(EquilibriumMoisture.of(Temperature.ofCelsius(20), RelativeHumidity.ofPct(rh_pct)));
            largest_pct = Math.max(largest_pct, Math.abs(ours.moisture().pct() - otherCurve_pct(20, rh_pct / 100.0)));
        }
        assertThat(largest_pct).isCloseTo(0.55, within(0.005)); // the source's two digits
        assertThat(largest_pct).isCloseTo(EquilibriumMoisture.MODEL_UNCERTAINTY_PCT, within(0.06)); // rounded to 0.5
    }

    private static double otherCurve_pct(double t_C, double h) {
        double t_K = t_C + 273.15;
        double driving = -0.000612 * t_K * Math.pow(1 - t_K / 647.1, 2.43) * Math.log(1 - h);
        return 100 * Math.pow(driving, 0.0577 * Math.pow(t_K, 0.430));
    }
}
