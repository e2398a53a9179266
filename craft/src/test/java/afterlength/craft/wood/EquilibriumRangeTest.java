package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.Problem;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EquilibriumRangeTest {
    private static final Temperature ROOM = Temperature.ofCelsius(20);

    @Test
    void outsideBothRangesBothAreNamed() {
        assertThat(EquilibriumMoisture.of(Temperature.ofCelsius(95.5), RelativeHumidity.ofPct(0)))
                .isInstanceOfSatisfying(
                        EquilibriumMoisture.OutsideRange.class,
                        outside -> assertThat(outside.problems())
                                .containsExactly(
                                        new Problem(
                                                "/temperature_C",
                                                95.5,
                                                "The temperature is 95.5 °C; the curve of wood moisture was checked from -1.1 to 60 °C"
                                                        + " only. Give a temperature in that range."),
                                        new Problem(
                                                "/relative_humidity_pct",
                                                0.0,
                                                "The relative humidity is 0.0 %; the curve of wood moisture was checked from 5 to 90 %"
                                                        + " only. Give a relative humidity in that range.")));
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 90})
    void theEndsOfTheHumidityRangeAreInside(double rh_pct) {
        for (double t_F : new double[] {30, 140}) {
            assertThat(EquilibriumMoisture.of(Temperature.ofFahrenheit(t_F), RelativeHumidity.ofPct(rh_pct)))
                    .isInstanceOf(EquilibriumMoisture.Value.class);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.999, 90.001, 0, 100})
    void justOutsideThereIsNoNumber(double rh_pct) {
        assertThat(EquilibriumMoisture.of(ROOM, RelativeHumidity.ofPct(rh_pct)))
                .isInstanceOf(EquilibriumMoisture.OutsideRange.class);
    }

    @Test
    void everyValueSaysHowFarItMayBeTrusted() {
        EquilibriumMoisture.Value value = Known.moisture(EquilibriumMoisture.of(ROOM, RelativeHumidity.ofPct(50)));
        assertThat(value.uncertainty_pct()).isEqualTo(0.5);
        assertThat(value.caveats())
                .extracting(WoodCaveat::text)
                .containsExactly(
                        "The moisture curve is uncertain by about ±0.5 % moisture content.",
                        "Wood that is drying stays somewhat damper than this; wood that is taking up moisture, somewhat drier.",
                        "This is where the wood settles in time; a plate follows the air over hours to days, slower under"
                                + " varnish.");
    }

    @Test
    void noAirGivesSuchWetWood() {
        assertThat(EquilibriumHumidity.of(ROOM, MoistureContent.ofPct(28)))
                .isEqualTo(new EquilibriumHumidity.OutsideRange(List.of(new Problem(
                        "/moisture_pct",
                        28.0,
                        "The moisture content is 28.0 %; at 20.0 °C air of 5 to 90 % gives 1.3 to 20.5 %. Give a moisture"
                                + " content in that range."))));
    }

    @Test
    void theWayBackKeepsToTheSameTemperatures() {
        assertThat(EquilibriumHumidity.of(Temperature.ofCelsius(-5), MoistureContent.ofPct(9)))
                .isInstanceOf(EquilibriumHumidity.OutsideRange.class);
    }

    /** From 50 to 60 % relative humidity wood gains 1.73 %, so 0.5 % of moisture is worth about 3 % of humidity; ±0.3 for the bend. */
    @Test
    void theUncertaintyIsCarriedBackToHumidity() {
        EquilibriumHumidity.Value value = Known.humidity(EquilibriumHumidity.of(ROOM, MoistureContent.ofPct(10.101)));
        assertThat(value.humidity().pct()).isCloseTo(55, within(0.005)); // three decimals of moisture
        assertThat(value.uncertainty_pct()).isCloseTo(0.5 / 0.173, within(0.3));
    }
}
