package afterlength.workshop.retouch;

import afterlength.craft.colour.KubelkaMunk;
import afterlength.craft.colour.Light;
import afterlength.craft.colour.Saunderson;
import afterlength.craft.colour.Spectrum;

/** What one coat of a colour looks like in daylight over an even white and an even black, for a patch on a screen. */
final class FilmPatch {
    private static final double WHITE = 0.85;
    private static final double BLACK = 0.02;

    private FilmPatch() {}

    static String overWhite(PaletteColour colour) {
        return over(colour, WHITE);
    }

    static String overBlack(PaletteColour colour) {
        return over(colour, BLACK);
    }

    private static String over(PaletteColour colour, double ground) {
        double inner = Saunderson.VARNISH.inner(ground);
        double[] seen = new double[PaletteGrid.WAVELENGTHS.count()];
        for (int n = 0; n < seen.length; n++) {
            seen[n] = Saunderson.VARNISH.measured(KubelkaMunk.overGround(
                    colour.absorption().at(n), colour.scatter().at(n), 1, inner));
        }
        return Seen.hex(Spectrum.of(PaletteGrid.WAVELENGTHS, seen), Light.D65);
    }
}
