package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A belly 208 mm and a back 206 mm wide at the lower bout, at 20 °C, worked once by hand; one unit in the last digit, since steps were rounded. */
class WidthChangePublishedTest {
    @ParameterizedTest
    @CsvSource({
        "60, 40, -3.2774, -1.009, -0.886, -0.48, -1.91, -1.114, -2.383",
        "60, 30, -4.8116, -1.481, -1.301, -0.70, -2.80, -1.635, -3.499",
        "50, 35, -2.3079, -0.711, -0.624, -0.34, -1.34, -0.784, -1.678",
        "50, 30, -3.0829, -0.949, -0.834, -0.45, -1.80, -1.048, -2.242",
        "45, 65, +3.5111, +1.081, +0.949, +0.51, +2.05, +1.193, +2.553"
    })
    void theWorkedExamplesAreMet(
            double from_pct,
            double to_pct,
            double change_pct,
            double sitka_mm,
            double engelmann_mm,
            double norwayLow_mm,
            double norwayHigh_mm,
            double mapleQuarter_mm,
            double mapleSlab_mm) {
        MoistureContent from = moisture(from_pct);
        MoistureContent to = moisture(to_pct);
        assertThat(to.pct() - from.pct()).isCloseTo(change_pct, within(0.00005));
        assertMoves(WidthChange.of(Length.ofMm(208), Wood.SITKA_SPRUCE, Cut.QUARTER, from, to), sitka_mm);
        assertMoves(WidthChange.of(Length.ofMm(208), Wood.ENGELMANN_SPRUCE, Cut.QUARTER, from, to), engelmann_mm);
        assertMoves(WidthChange.of(Length.ofMm(206), Wood.SUGAR_MAPLE, Cut.QUARTER, from, to), mapleQuarter_mm);
        assertMoves(WidthChange.of(Length.ofMm(206), Wood.SUGAR_MAPLE, Cut.SLAB, from, to), mapleSlab_mm);
        WidthChange norway = WidthChange.of(Length.ofMm(208), Wood.NORWAY_SPRUCE, Cut.QUARTER, from, to);
        assertThat(norway.low().mm()).isCloseTo(norwayLow_mm, within(0.01));
        assertThat(norway.high().mm()).isCloseTo(norwayHigh_mm, within(0.01));
    }

    /** One mean coefficient, so the three figures are one. */
    private static void assertMoves(WidthChange change, double expected_mm) {
        assertThat(change.typical().mm()).isCloseTo(expected_mm, within(0.001));
        assertThat(change.low()).isEqualTo(change.typical());
        assertThat(change.high()).isEqualTo(change.typical());
    }

    private static MoistureContent moisture(double rh_pct) {
        return Known.moisture(EquilibriumMoisture.of(Temperature.ofCelsius(20), RelativeHumidity.ofPct(rh_pct)))
                .moisture();
    }
}
