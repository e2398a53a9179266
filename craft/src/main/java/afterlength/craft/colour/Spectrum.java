package afterlength.craft.colour;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Numbers over wavelengths: reflectances (0 black to 1), or what a film absorbs and scatters per micrometre. */
public final class Spectrum {
    private final Wavelengths wavelengths;
    private final double[] values;

    private Spectrum(Wavelengths wavelengths, double[] values) {
        this.wavelengths = wavelengths;
        this.values = values;
    }

    public static Spectrum of(Wavelengths wavelengths, double... values) {
        if (values.length != wavelengths.count()) {
            throw new IllegalArgumentException(values.length + " values for " + wavelengths.count() + " wavelengths");
        }
        return new Spectrum(wavelengths, values.clone());
    }

    /** The same value at every wavelength: an even grey. */
    public static Spectrum even(Wavelengths wavelengths, double value) {
        double[] values = new double[wavelengths.count()];
        Arrays.fill(values, value);
        return new Spectrum(wavelengths, values);
    }

    public Wavelengths wavelengths() {
        return wavelengths;
    }

    public double at(int index) {
        return values[index];
    }

    public double[] values() {
        return values.clone();
    }

    public Spectrum map(DoubleUnaryOperator change) {
        return new Spectrum(wavelengths, Arrays.stream(values).map(change).toArray());
    }
}
