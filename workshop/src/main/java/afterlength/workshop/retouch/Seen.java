package afterlength.workshop.retouch;

import afterlength.craft.colour.Lab;
import afterlength.craft.colour.Light;
import afterlength.craft.colour.Spectrum;
import afterlength.craft.colour.Srgb;
import afterlength.craft.colour.Viewing;
import afterlength.workshop.desk.Figures;

/** How a reflectance looks under a light to an eye that has become used to it, as far as a screen can show. */
final class Seen {
    private Seen() {}

    static Lab lab(Spectrum colour, Light light) {
        return Viewing.under(light, colour.wavelengths()).lab(colour);
    }

    static String hex(Spectrum colour, Light light) {
        return Srgb.of(lab(colour, light)).hex();
    }

    /** "L* 42.0, a* 18.1, b* 36.2". */
    static String words(Spectrum colour) {
        Lab lab = lab(colour, Light.D65);
        return "L*\u00a0" + Figures.fixed(lab.lightness(), 1) + ", a*\u00a0" + Figures.fixed(lab.a(), 1) + ", b*\u00a0"
                + Figures.fixed(lab.b(), 1);
    }
}
