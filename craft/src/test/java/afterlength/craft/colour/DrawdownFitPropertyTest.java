package afterlength.craft.colour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * A palette of invented colorants is drawn down, measured with the noise of an instrument (0.15 %), fitted, and its films counted
 * again: films of other thicknesses over the ground of the loss, which the fit has never seen.
 */
class DrawdownFitPropertyTest {
    private static final double NOISE = 0.0015;
    private static final Wavelengths AT = SyntheticPalette.WAVELENGTHS;
    private static final Spectrum WHITE = Spectrum.even(AT, 0.82);
    private static final Spectrum BLACK = Spectrum.even(AT, 0.03);
    private static final Spectrum GROUND = Saunderson.VARNISH.measured(SyntheticPalette.ground());
    private static final Viewing DAYLIGHT = Viewing.under(Light.D65, AT);

    @Test
    void filmsOfAFittedPaletteComeOutAsDrawn() {
        SplittableRandom random = new SplittableRandom(2026);
        List<Double> differences = new ArrayList<>();
        for (Colorant colorant : SyntheticPalette.colorants()) {
            Colorant fitted = DrawdownFit.fit(colorant.name(), drawn(colorant, random), NOISE, Saunderson.VARNISH)
                    .colorant();
            for (double coats : new double[] {0.25, 0.5, 0.75, 1}) {
                differences.add(ColourDifference.of(
                        DAYLIGHT.lab(film(colorant, coats, GROUND)), DAYLIGHT.lab(film(fitted, coats, GROUND))));
            }
        }
        differences.sort(null);
        assertThat(differences.get(differences.size() / 2)).as("median dE00").isLessThan(0.3);
        assertThat(differences.get(differences.size() - 1)).as("largest dE00").isLessThan(0.8);
    }

    private static List<Drawdown> drawn(Colorant colorant, SplittableRandom random) {
        return List.of(
                measured(colorant, 0.5, WHITE, random),
                measured(colorant, 1, WHITE, random),
                measured(colorant, 1, BLACK, random),
                measured(colorant, 2, BLACK, random));
    }

    private static Drawdown measured(Colorant colorant, double coats, Spectrum ground, SplittableRandom random) {
        Spectrum film =
                film(colorant, coats, ground).map(value -> Math.max(1e-4, value + NOISE * random.nextGaussian()));
        return new Drawdown(coats, ground, film);
    }

    private static Spectrum film(Colorant colorant, double coats, Spectrum ground) {
        double[] seen = new double[AT.count()];
        new FilmOnGround(ground, List.of(colorant), Saunderson.VARNISH)
                .measure(new int[] {0}, new double[] {coats}, seen);
        return Spectrum.of(AT, seen);
    }
}
