package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Even play against {@link EvenPlayGrid}. */
class EvenPlayOracleTest {
    private static final BowMapAxes AXES =
            new BowMapAxes(List.of(0, 7, 12, 19, 24), List.of(12.0, 25.0), List.of(0.0, 1.0));

    @Test
    void noPairOfClearancesOnAnyGridIsBetter() {
        for (long seed = 1; seed <= 25; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            BridgeInputs inputs = Bench.violinWithBody()
                    .change()
                    .boardEndClearance_mm(new BassTreble(random.nextDouble(4, 6.5), random.nextDouble(2.5, 4.5)))
                    .waist(new Waist(random.nextDouble(100, 116), random.nextDouble(2, 12)))
                    .bridgeSpacing(new StringSpacing.ByCentres(random.nextDouble(30, 36)))
                    .crown(new EvenPlayCrown(AXES))
                    .done();
            BowMap map = (BowMap) BowMap.of(Bench.shape(inputs), AXES);
            double even_deg = map.findTightest().orElseThrow().opening_deg();
            double grid_deg = new EvenPlayGrid(inputs, AXES).search_deg();
            assertThat(even_deg).as("seed " + seed).isGreaterThan(grid_deg - 1e-5); // where the halving ends
            assertThat(grid_deg)
                    .as("seed " + seed)
                    .isGreaterThan(even_deg - 0.02); // the last grid is 0.1 µm to 1 µm wide
        }
    }
}
