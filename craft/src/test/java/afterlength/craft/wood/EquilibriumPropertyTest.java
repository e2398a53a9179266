package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class EquilibriumPropertyTest {
    private static final int CASES = 2000;

    @Test
    void damperAirMakesDamperWood() {
        for (long seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Temperature temperature = temperature(random);
            double one_pct = random.nextDouble(5, 90);
            double other_pct = random.nextDouble(5, 90);
            assertThat(Math.signum(moisture_pct(temperature, other_pct) - moisture_pct(temperature, one_pct)))
                    .as("seed %d", seed)
                    .isEqualTo(Math.signum(other_pct - one_pct));
        }
    }

    @Test
    void thereAndBackIsTheSameHumidity() {
        for (long seed = 0; seed < CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Temperature temperature = temperature(random);
            double rh_pct = random.nextDouble(5, 90);
            EquilibriumMoisture.Value moisture =
                    Known.moisture(EquilibriumMoisture.of(temperature, RelativeHumidity.ofPct(rh_pct)));
            EquilibriumHumidity.Value back = Known.humidity(EquilibriumHumidity.of(temperature, moisture.moisture()));
            assertThat(back.humidity().pct()).as("seed %d", seed).isCloseTo(rh_pct, within(1e-6)); // as promised
            assertThat(moisture_pct(temperature, back.humidity().pct()))
                    .as("seed %d", seed)
                    .isCloseTo(moisture.moisture().pct(), within(1e-6));
        }
    }

    @Test
    void theEndsOfTheRangeComeBackToo() {
        for (double rh_pct : new double[] {5, 90}) {
            Temperature temperature = Temperature.ofCelsius(20);
            EquilibriumMoisture.Value moisture =
                    Known.moisture(EquilibriumMoisture.of(temperature, RelativeHumidity.ofPct(rh_pct)));
            assertThat(Known.humidity(EquilibriumHumidity.of(temperature, moisture.moisture()))
                            .humidity()
                            .pct())
                    .isCloseTo(rh_pct, within(1e-6));
        }
    }

    private static Temperature temperature(SplittableRandom random) {
        return Temperature.ofCelsius(random.nextDouble(-1.1, 60));
    }

    private static double moisture_pct(Temperature temperature, double rh_pct) {
        return Known.moisture(EquilibriumMoisture.of(temperature, RelativeHumidity.ofPct(rh_pct)))
                .moisture()
                .pct();
    }
}
