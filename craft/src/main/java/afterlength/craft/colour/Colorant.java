package afterlength.craft.colour;

/**
 * A colorant as it lies in its medium: what a film of it absorbs and scatters, per micrometre of film (or per coat, as long as all of
 * one palette are given alike).
 */
public record Colorant(String name, Spectrum absorption, Spectrum scatter) {
    public Colorant {
        if (!absorption.wavelengths().equals(scatter.wavelengths())) {
            throw new IllegalArgumentException(name + ": absorption and scatter are given at different wavelengths");
        }
    }

    public Wavelengths wavelengths() {
        return absorption.wavelengths();
    }
}
