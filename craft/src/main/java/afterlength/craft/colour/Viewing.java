package afterlength.craft.colour;

import java.util.Arrays;

/**
 * The standard observer looking at a reflecting surface under one light. Sums go over the wavelengths of the spectrum as they are;
 * the white comes from the same wavelengths, since a spectrum cut short at red or violet moves the white as well as the colour.
 * Source: docs/sources.md#cie-015.
 */
public final class Viewing {
    private final Light light;
    private final Wavelengths wavelengths;
    private final double[][] weights = new double[3][];
    private final Xyz white;

    private Viewing(Light light, Wavelengths wavelengths) {
        this.light = light;
        this.wavelengths = wavelengths;
        double brightness = 0;
        for (int i = 0; i < wavelengths.count(); i++) {
            brightness += radiant(i, 1);
        }
        for (int which = 0; which < 3; which++) {
            weights[which] = new double[wavelengths.count()];
            for (int i = 0; i < wavelengths.count(); i++) {
                weights[which][i] = radiant(i, which) / brightness;
            }
        }
        double[] ones = new double[wavelengths.count()];
        Arrays.fill(ones, 1);
        white = sum(ones);
    }

    public static Viewing under(Light light, Wavelengths wavelengths) {
        return new Viewing(light, wavelengths);
    }

    private double radiant(int index, int which) {
        int at_nm = wavelengths.at_nm(index);
        return CieTable.light(light, at_nm) * CieTable.observer(which, at_nm);
    }

    public Xyz white() {
        return white;
    }

    public Xyz xyz(Spectrum reflectance) {
        requireSame(reflectance);
        return sum(reflectance.values());
    }

    public Lab lab(Spectrum reflectance) {
        return Lab.of(xyz(reflectance), white);
    }

    /** Without a copy, for loops over many films. */
    Lab lab(double[] reflectances) {
        return Lab.of(sum(reflectances), white);
    }

    /** What one wavelength adds to x (0), y (1) or z (2). */
    double weight(int which, int index) {
        return weights[which][index];
    }

    private Xyz sum(double[] reflectances) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < reflectances.length; i++) {
            x += weights[0][i] * reflectances[i];
            y += weights[1][i] * reflectances[i];
            z += weights[2][i] * reflectances[i];
        }
        return new Xyz(x, y, z);
    }

    private void requireSame(Spectrum spectrum) {
        if (!spectrum.wavelengths().equals(wavelengths)) {
            throw new IllegalArgumentException(
                    "the spectrum is given at " + spectrum.wavelengths() + ", not at " + wavelengths);
        }
    }
}
