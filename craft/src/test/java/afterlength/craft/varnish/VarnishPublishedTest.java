package afterlength.craft.varnish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class VarnishPublishedTest {
    /** Published checks of the film formulas, docs/sources.md#film-formulas. */
    @Test
    void filmsAsPublished() {
        assertThat(new Film(62).wetFor_um(100)).isCloseTo(161.29, within(0.005));
        assertThat(new Film(100).coverage_m2_L(1)).isCloseTo(1000, within(1e-9));
    }

    /** 10 mil wet goes 160.417 square feet to the US gallon: 0.254 mm, the foot 0.3048 m, the gallon 3.785411784 L. */
    @Test
    void tenMilWetAsPublished() {
        double area_m2 = 160.417 * 0.3048 * 0.3048;
        assertThat(Film.wet_um(3785.411784, area_m2)).isCloseTo(254, within(0.001));
    }

    /** The worked batch of the study of materials: oil, resin and turpentine 50, 50 and 100 g. */
    @Test
    void theWorkedBatch() {
        VarnishBatch batch = (VarnishBatch) VarnishBatch.of(List.of(
                new Ingredient("linseed oil", 50, 930, Part.OIL),
                new Ingredient("colophony", 50, 1070, Part.RESIN),
                new Ingredient("turpentine", 100, 870, Part.SOLVENT)));
        assertThat(batch.volume_mL()).isCloseTo(215.435, within(5e-4));
        assertThat(batch.massSolids_pct()).isCloseTo(50, within(1e-12));
        assertThat(batch.volumeSolids_pct()).isCloseTo(46.646, within(5e-4));
        assertThat(batch.oilToResin()).contains(new OilToResin(1));
        Film film = new Film(batch.volumeSolids_pct());
        assertThat(Film.wet_um(8, 0.15)).isCloseTo(53.33, within(0.005));
        assertThat(film.dry_um(Film.wet_um(8, 0.15))).isCloseTo(24.88, within(0.005));
        assertThat(film.wetFor_um(30) / 4).isCloseTo(16.08, within(0.005));
        assertThat(film.volume_mL(30, 0.15) / 4).isCloseTo(2.41, within(0.005));
    }

    /** The conversion table of the study; 25 gallons is the "25-gallon varnish" of a published definition. */
    @Test
    void threeScalesOfOneVarnish() {
        double[][] table = {{0.667, 40.0, 8.59}, {1, 50.0, 12.88}, {1.5, 60.0, 19.33}, {3, 75.0, 38.65}};
        for (double[] row : table) {
            OilToResin varnish = new OilToResin(row[0]);
            assertThat(varnish.inPercent().pct()).isCloseTo(row[1], within(0.05));
            assertThat(varnish.inGallons().gallonsPer100Lb()).isCloseTo(row[2], within(0.01));
        }
        assertThat(new OilToResin(1.94).inGallons().gallonsPer100Lb()).isCloseTo(25, within(0.01));
        assertThat(new OilToResin(1.94).inPercent().pct()).isCloseTo(65.99, within(0.01));
    }

    /** The same varnish, medium on two scales and short on the third. */
    @Test
    void classesBelongToTheirScale() {
        OilToResin even = new OilToResin(1);
        assertThat(even.richness()).isEqualTo(OilToResin.Richness.MEDIUM);
        assertThat(even.inPercent().length()).isEqualTo(OilLengthClass.MEDIUM);
        assertThat(even.inGallons().length()).isEqualTo(OilLengthClass.SHORT);
    }

    @Test
    void whatIsWrongIsNamedAtOnce() {
        BatchAnswer answer = VarnishBatch.of(List.of(
                new Ingredient("linseed oil", -5, 930, Part.OIL), new Ingredient("mastic", 20, 1.07, Part.RESIN)));
        assertThat(((BatchAnswer.Refused) answer).problems())
                .extracting("message")
                .containsExactly(
                        "The mass of linseed oil is -5 g; it must be more than 0 and at most 100000 g.",
                        "The density of mastic is 1.07 kg/m³; it must be more than 500 and at most 8000 kg/m³.");
    }

    @Test
    void ownCoatsGiveAnEstimateWithItsSpread() {
        List<CoatRecord> coats =
                List.of(new CoatRecord(20, 20, 45), new CoatRecord(30, 18, 60), new CoatRecord(24, 21, 50));
        assertThat(DryingEstimate.of(coats, 20, 50)).isEqualTo(new DryingEstimate.Own(20, 24, 30, 3, false));
        assertThat(DryingEstimate.of(coats, 26, 50)).isEqualTo(new DryingEstimate.Own(20, 24, 30, 3, true));
        assertThat(DryingEstimate.of(coats.subList(0, 2), 20, 50)).isEqualTo(new DryingEstimate.TooFew(2));
    }
}
