package afterlength.craft.colour;

import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The smoothest reflectance that has a given colour in daylight, for a colour known from a photograph alone: of all spectra with that
 * L*a*b* the one whose hyperbolic arc tangent has the least slope, so that it stays between 0 and 1 (Burns 2019). It has the colour
 * by daylight exactly; under another light it is a guess, off by 1.2 to 1.9 on the mean and by 3 to 4 at worst of twenty.
 * Source: docs/sources.md#burns-2019 and docs/sources.md#colour-study.
 */
public final class SmoothSpectrum {
    private static final int STEPS_AT_MOST = 60;
    private static final double NEAR_ENOUGH = 1e-11;

    private final Viewing viewing;
    private final int count;
    private final Xyz colour;
    private final RealVector unknowns;

    private SmoothSpectrum(Xyz colour, Viewing viewing, int count) {
        this.viewing = viewing;
        this.count = count;
        this.colour = colour;
        unknowns = new ArrayRealVector(count + 3);
    }

    /** Empty when no reflectance between 0 and 1 has this colour. */
    public static Optional<Spectrum> find(Lab colour, Wavelengths wavelengths) {
        Viewing viewing = Viewing.under(Light.D65, wavelengths);
        return new SmoothSpectrum(colour.toXyz(viewing.white()), viewing, wavelengths.count()).find(wavelengths);
    }

    private Optional<Spectrum> find(Wavelengths wavelengths) {
        for (int step = 0; step < STEPS_AT_MOST; step++) {
            RealVector wrong = wrong();
            if (wrong.getLInfNorm() < NEAR_ENOUGH) {
                return Optional.of(Spectrum.of(wavelengths, reflectances()));
            }
            try {
                RealVector change = new LUDecomposition(slopes()).getSolver().solve(wrong);
                unknowns.combineToSelf(1, -1, change);
            } catch (MathRuntimeException singular) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private double[] reflectances() {
        double[] reflectances = new double[count];
        for (int i = 0; i < count; i++) {
            reflectances[i] = (Math.tanh(unknowns.getEntry(i)) + 1) / 2;
        }
        return reflectances;
    }

    /** How far the slope is from least, and the colour from what it shall be; all zero at the answer. */
    private RealVector wrong() {
        RealVector wrong = new ArrayRealVector(count + 3);
        double[] reflectances = reflectances();
        for (int i = 0; i < count; i++) {
            wrong.setEntry(i, roughness(i) + steepness(i) * pull(i));
            for (int which = 0; which < 3; which++) {
                wrong.addToEntry(count + which, viewing.weight(which, i) * reflectances[i]);
            }
        }
        wrong.addToEntry(count, -colour.x());
        wrong.addToEntry(count + 1, -colour.y());
        wrong.addToEntry(count + 2, -colour.z());
        return wrong;
    }

    private double roughness(int i) {
        double here = unknowns.getEntry(i);
        double left = i == 0 ? 0 : here - unknowns.getEntry(i - 1);
        double right = i == count - 1 ? 0 : unknowns.getEntry(i + 1) - here;
        return 2 * (left - right);
    }

    /** Change of the reflectance with its unknown. */
    private double steepness(int i) {
        double tanh = Math.tanh(unknowns.getEntry(i));
        return (1 - tanh * tanh) / 2;
    }

    private double pull(int i) {
        double pull = 0;
        for (int which = 0; which < 3; which++) {
            pull += viewing.weight(which, i) * unknowns.getEntry(count + which);
        }
        return pull;
    }

    private RealMatrix slopes() {
        RealMatrix slopes = new Array2DRowRealMatrix(count + 3, count + 3);
        for (int i = 0; i < count; i++) {
            int neighbours = i == 0 || i == count - 1 ? 1 : 2;
            double curving = -2 * Math.tanh(unknowns.getEntry(i)) * steepness(i) * pull(i);
            slopes.setEntry(i, i, 2 * neighbours + curving);
            if (i > 0) {
                slopes.setEntry(i, i - 1, -2);
                slopes.setEntry(i - 1, i, -2);
            }
            for (int which = 0; which < 3; which++) {
                double weight = viewing.weight(which, i) * steepness(i);
                slopes.setEntry(i, count + which, weight);
                slopes.setEntry(count + which, i, weight);
            }
        }
        return slopes;
    }
}
