package afterlength.craft.colour;

import static afterlength.craft.colour.ColourTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class KubelkaMunkPublishedTest {
    /** 132 films of published watercolours (docs/sources.md#curtis-1997), integrated numerically by another program and printed to eight decimals. */
    @Test
    void filmsOverGroundAsIntegrated() throws IOException {
        var films = ColourTable.rows("km_layer_cases.csv");
        assertThat(films).hasSizeGreaterThan(130);
        for (NamedCsvRecord film : films) {
            double over =
                    KubelkaMunk.overGround(number(film, "K"), number(film, "S"), number(film, "X"), number(film, "Rg"));
            assertThat(over).as(film.toString()).isCloseTo(number(film, "R_ode"), within(6e-9));
        }
    }

    /** Our own integration of dR/dx = S − 2(K + S)R + S·R², fourth-order Runge–Kutta, over the whole range of films. */
    @Test
    void filmsOverGroundAsIntegratedHere() {
        SplittableRandom random = new SplittableRandom(8);
        for (int film = 0; film < 300; film++) {
            double absorption = film % 10 == 0 ? 0 : Math.exp(random.nextDouble(-8, 1.5));
            double scatter = film % 7 == 0 ? 0 : Math.exp(random.nextDouble(-8, 1));
            double thickness = random.nextDouble(0, 2);
            double ground = random.nextDouble();
            assertThat(KubelkaMunk.overGround(absorption, scatter, thickness, ground))
                    .as("K %s S %s X %s Rg %s", absorption, scatter, thickness, ground)
                    .isCloseTo(integrated(absorption, scatter, thickness, ground), within(1e-9));
        }
    }

    private static double integrated(double k, double s, double thickness, double ground) {
        int steps = 4000;
        double h = thickness / steps;
        double r = ground;
        for (int i = 0; i < steps; i++) {
            double first = slope(k, s, r);
            double second = slope(k, s, r + h / 2 * first);
            double third = slope(k, s, r + h / 2 * second);
            double fourth = slope(k, s, r + h * third);
            r += h / 6 * (first + 2 * second + 2 * third + fourth);
        }
        return r;
    }

    private static double slope(double k, double s, double r) {
        return s - 2 * (k + s) * r + s * r * r;
    }

    /** Without scatter a film darkens by the law of Beer and Lambert, there and back. */
    @Test
    void aClearFilmDarkensThereAndBack() {
        assertThat(KubelkaMunk.overGround(0.3, 0, 1, 0.5)).isCloseTo(0.5 * Math.exp(-0.6), within(1e-15));
    }

    @Test
    void twoGroundsGiveBackWhatTheFilmIs() {
        SplittableRandom random = new SplittableRandom(18);
        for (double[] grounds : new double[][] {{0, 1}, {0.03, 0.82}}) {
            for (int film = 0; film < 200; film++) {
                double k = Math.exp(random.nextDouble(-3, 0.7));
                double s = Math.exp(random.nextDouble(-3, 0.7));
                double thickness = random.nextDouble(0.3, 1.2);
                KubelkaMunk.Film back = KubelkaMunk.between(
                        KubelkaMunk.overGround(k, s, thickness, grounds[0]),
                        grounds[0],
                        KubelkaMunk.overGround(k, s, thickness, grounds[1]),
                        grounds[1],
                        thickness);
                assertThat(back.absorption())
                        .as("K %s S %s X %s", k, s, thickness)
                        .isCloseTo(k, within(1e-9));
                assertThat(back.scatter()).as("K %s S %s X %s", k, s, thickness).isCloseTo(s, within(1e-9));
            }
        }
    }

    @Test
    void aThickFilmForgetsItsGround() {
        assertThat(KubelkaMunk.overGround(0.2, 0.5, 40, 0.9)).isCloseTo(KubelkaMunk.opaque(0.2, 0.5), within(1e-12));
    }

    /** k1 and k2 for n = 1.50, computed from Fresnel's formulas by another program; the refractive index is 1.5 exactly. */
    @Test
    void theSurfaceOfAVarnish() {
        assertThat(Saunderson.ofIndex(1.5, true).outside()).isCloseTo(0.04, within(1e-12));
        assertThat(Saunderson.ofIndex(1.5, true).inside()).isCloseTo(0.596346, within(1e-6));
        Saunderson surface = new Saunderson(0.04, 0.596, true);
        assertThat(surface.measured(0.5)).isCloseTo(0.31623932, within(1e-8));
        assertThat(surface.inner(surface.measured(0.5))).isCloseTo(0.5, within(1e-14));
    }
}
