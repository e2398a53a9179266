package afterlength.craft.glue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.wood.WoodHeat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plate, solved in slices, against the formula of thick wood, against the balance of heat and against itself on a finer grid. */
class PlateCoolingOracleTest {
    private static final WoodHeat[] WOODS = {WoodHeat.SPRUCE, WoodHeat.MAPLE};

    /** Two different models of the film (one temperature against eight slices) may lie 0.3 °C apart, once the film has evened out. */
    @Test
    void agreesWithThickWoodWhereThatIsValid() {
        double worst_C = 0;
        for (WoodHeat wood : WOODS) {
            for (double film_mm : new double[] {0.05, 0.1, 0.2, 0.3}) {
                Spread spread = Joints.plate(wood, 20, film_mm, 12);
                PlateCurve plate = new PlateCurve(spread, 0, 1);
                ThickWoodCurve thick = new ThickWoodCurve(spread);
                double valid_s = Joints.known(spread).validFor_s();
                double gel_s = thick.findTime_s(32).orElseThrow();
                for (double time_s = gel_s / 2; time_s < Math.min(valid_s, 4 * gel_s); time_s *= 1.3) {
                    worst_C = Math.max(worst_C, Math.abs(plate.at_C(time_s) - thick.at_C(time_s)));
                }
            }
        }
        assertThat(worst_C).isLessThanOrEqualTo(0.3);
    }

    /** Sealed behind, film and plate meet where their heat is shared: 27.4, 32.5 and 36.2 °C for 0.1, 0.2 and 0.3 mm on 2.5 mm spruce. */
    @ParameterizedTest
    @CsvSource({"0.1, 27.4", "0.2, 32.5", "0.3, 36.2"})
    void settlesWhereTheHeatIsShared(double film_mm, double meet_C) {
        Spread spread = Joints.plate(WoodHeat.SPRUCE, 20, film_mm, 2.5);
        double balance_C = new WindowReckoning(spread).settles_C();
        assertThat(balance_C).isCloseTo(meet_C, within(0.06)); // printed to one decimal
        assertThat(new PlateCurve(spread, 0, 1).at_C(WindowSeconds.LONGEST_S)).isCloseTo(balance_C, within(0.001));
    }

    @Test
    void noHeatIsLostOnTheWay() {
        Layers layers = Layers.of(GlueLiquid.of(0.5), 3e-4, WoodHeat.SPRUCE, 2.5e-3, 8, 48);
        PlateCooling cooling = new PlateCooling(layers, 60, 20, 20, 0, PlateCooling.GROWTH);
        double whole_J_m2 = cooling.heatAbove_J_m2(20);
        for (int step = 0; step < 300; step++) {
            cooling.advance();
            assertThat(cooling.heatAbove_J_m2(20)).isCloseTo(whole_J_m2, within(1e-9 * whole_J_m2)); // rounding
        }
    }

    @Test
    void theGridDoesNotMatter() {
        double worst_C = 0;
        for (WoodHeat wood : WOODS) {
            for (double film_mm : new double[] {0.05, 0.1, 0.3, 1}) {
                for (double plate_mm : new double[] {1, 2.5, 4, 12}) {
                    Spread spread = Joints.plate(wood, 20, film_mm, plate_mm);
                    PlateCurve usual = new PlateCurve(spread, 10, 1);
                    PlateCurve fine = new PlateCurve(spread, 10, 3);
                    for (double time_s = 0.5; time_s < 600; time_s *= 1.7) {
                        worst_C = Math.max(worst_C, Math.abs(usual.at_C(time_s) - fine.at_C(time_s)));
                    }
                }
            }
        }
        assertThat(worst_C).isLessThanOrEqualTo(0.05);
    }

    /** With air behind it everything comes to the temperature of the room in the end. */
    @Test
    void theAirTakesTheRest() {
        Spread spread = Joints.plate(WoodHeat.SPRUCE, 20, 0.3, 2.5);
        double sealed_C = new PlateCurve(spread, 0, 1).at_C(600);
        double open_C = new PlateCurve(spread, 10, 1).at_C(600);
        assertThat(open_C).isLessThan(sealed_C).isGreaterThan(20);
    }
}
