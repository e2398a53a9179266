package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Length;
import afterlength.craft.units.MoistureContent;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WidthChangeTest {
    private static final List<Wood> WOODS = List.of(Wood.values());

    @Test
    void outsideTheValidRangeTheValueSaysSo() {
        assertThat(change(Wood.SITKA_SPRUCE, 5.5, 14.5).caveats())
                .extracting(WoodCaveat::text)
                .containsExactly(
                        "For Sitka spruce one mean coefficient was read, so low and high are the same here; single pieces differ"
                                + " from it.",
                        "Moisture content 5.5 % lies outside 6 to 14 %, where the coefficients of movement are valid; take the"
                                + " change of width as a rough guide.",
                        "Moisture content 14.5 % lies outside 6 to 14 %, where the coefficients of movement are valid; take the"
                                + " change of width as a rough guide.",
                        "The change is that of a free plate; a plate glued at its edges moves less and is stressed instead.");
    }

    @Test
    void aSpreadIsNamedAsASpread() {
        assertThat(change(Wood.NORWAY_SPRUCE, 6, 14).caveats())
                .containsExactly(new WoodCaveat.MiddleOfSpread(Wood.NORWAY_SPRUCE), new WoodCaveat.FreePlate());
        assertThat(new WoodCaveat.MiddleOfSpread(Wood.NORWAY_SPRUCE).text())
                .isEqualTo("For Norway spruce a spread was read but no mean; typical is the middle of the spread.");
    }

    @Test
    void thereAndBackIsNoChange() {
        for (long seed = 0; seed < 200; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Wood wood = WOODS.get(random.nextInt(WOODS.size()));
            double one_pct = random.nextDouble(0, 40);
            double other_pct = random.nextDouble(0, 40);
            WidthChange there = change(wood, one_pct, other_pct);
            WidthChange back = change(wood, other_pct, one_pct);
            assertThat(there.high().mm() + back.high().mm())
                    .as("seed %d", seed)
                    .isCloseTo(0, within(1e-12)); // rounding
            assertThat(Math.abs(there.low().mm()))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(Math.abs(there.high().mm()));
        }
    }

    @Test
    void aboveFibreSaturationNothingGrows() {
        assertThat(change(Wood.SITKA_SPRUCE, 30, 60).typical()).isEqualTo(Length.ofMm(0));
    }

    @Test
    void aPlateWithoutWidthIsRefused() {
        assertThatThrownBy(() -> WidthChange.of(
                        Length.ofMm(0), Wood.RED_SPRUCE, Cut.SLAB, MoistureContent.ofPct(8), MoistureContent.ofPct(9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("width 0.0 mm is not greater than 0 mm");
    }

    @Test
    void aWoodIsFoundByItsNameInAnyCapitals() {
        assertThat(Wood.findBySpecies(" sitka Spruce ")).contains(Wood.SITKA_SPRUCE);
        assertThat(Wood.findBySpecies("boxwood")).isEmpty();
        assertThat(Wood.listSpecies()).startsWith("Sitka spruce").hasSize(14);
    }

    private static WidthChange change(Wood wood, double from_pct, double to_pct) {
        return WidthChange.of(
                Length.ofMm(208), wood, Cut.QUARTER, MoistureContent.ofPct(from_pct), MoistureContent.ofPct(to_pct));
    }
}
