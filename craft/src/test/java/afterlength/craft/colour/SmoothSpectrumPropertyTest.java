package afterlength.craft.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SmoothSpectrumPropertyTest {
    private static final Viewing DAYLIGHT = Viewing.under(Light.D65, Wavelengths.usual());

    @Test
    void coloursOfTheScreenHaveASmoothSpectrumOfTheirColour() {
        SplittableRandom random = new SplittableRandom(5);
        for (int trial = 0; trial < 300; trial++) {
            Srgb screen =
                    new Srgb(random.nextDouble(0.15, 0.9), random.nextDouble(0.1, 0.7), random.nextDouble(0.05, 0.6));
            Lab colour = screen.toLab();
            Spectrum smooth = SmoothSpectrum.find(colour, Wavelengths.usual()).orElseThrow();
            Lab back = DAYLIGHT.lab(smooth);
            assertThat(ColourDifference.of(colour, back)).as(colour.toString()).isCloseTo(0, within(1e-6));
            for (double value : smooth.values()) {
                assertThat(value).isBetween(0.0, 1.0);
            }
        }
    }

    @Test
    void anEvenGreyIsFoundEven() {
        Spectrum grey = Spectrum.even(Wavelengths.usual(), 0.18);
        Spectrum found =
                SmoothSpectrum.find(DAYLIGHT.lab(grey), Wavelengths.usual()).orElseThrow();
        for (double value : found.values()) {
            assertThat(value).isCloseTo(0.18, within(1e-9));
        }
    }

    @Test
    void noSurfaceHasAColourBrighterThanWhite() {
        assertThat(SmoothSpectrum.find(new Lab(104, 3, 20), Wavelengths.usual()))
                .isEmpty();
    }
}
