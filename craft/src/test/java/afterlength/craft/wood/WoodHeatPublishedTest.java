package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WoodHeatPublishedTest {
    private static final Temperature ROOM = Temperature.ofCelsius(20);

    /** docs/sources.md#wood-heat-code: 12 %, 340 K → 1.9146 kJ/kgK; printed to four decimals. */
    @Test
    void heatCapacity() {
        WoodHeat wood = WoodHeat.of(0.5, MoistureContent.ofPct(12), Temperature.ofCelsius(340 - 273.15));
        assertThat(wood.heat_J_kgK()).isCloseTo(1914.6, within(0.05));
    }

    /** docs/sources.md#wood-heat-code: basic gravity 0.54, total shrinkage 12.3 %, 10 % moisture → 0.1567 W/mK. */
    @Test
    void conductivity() {
        MoistureContent moisture = MoistureContent.ofPct(10);
        WoodHeat wood = WoodHeat.of(WoodHeat.gravityAt(0.54, 12.3, moisture), moisture, ROOM);
        assertThat(wood.conductivity_W_mK()).isCloseTo(0.1567, within(0.00005));
    }

    /** docs/sources.md#wood-handbook-2021: gravity 0.60 at 12 % → 672 kg/m³, an exact product. */
    @Test
    void density() {
        assertThat(WoodHeat.of(0.60, MoistureContent.ofPct(12), ROOM).density_kg_m3())
                .isCloseTo(672, within(1e-9));
    }

    /** Reckoned once by hand from the same three formulas; rounding only. */
    @ParameterizedTest
    @CsvSource({
        "0.36, 0.1061, 403.2, 263.2",
        "0.35, 0.1036, 392.0, 256.6",
        "0.48, 0.1352, 537.6, 343.2",
        "0.63, 0.1716, 705.6, 443.0"
    })
    void tonewoodsAtTwelvePerCent(double gravity, double k, double density, double effusivity) {
        WoodHeat wood = WoodHeat.of(gravity, MoistureContent.ofPct(12), ROOM);
        assertThat(wood.conductivity_W_mK()).isCloseTo(k, within(0.00006));
        assertThat(wood.density_kg_m3()).isCloseTo(density, within(0.05));
        assertThat(wood.effusivity()).isCloseTo(effusivity, within(0.06));
    }

    @Test
    void outsideTheFormulaThereIsNoWood() {
        assertThatThrownBy(() -> WoodHeat.of(0.2, MoistureContent.ofPct(12), ROOM))
                .hasMessage(
                        "specific gravity 0.2 at 12.0 % moisture: the formula is valid above 0.3, to 1.3, and below 25 %");
        assertThatThrownBy(() -> WoodHeat.of(0.4, MoistureContent.ofPct(100), ROOM))
                .hasMessage(
                        "specific gravity 0.4 at 100.0 % moisture: the formula is valid above 0.3, to 1.3, and below 25 %");
    }
}
