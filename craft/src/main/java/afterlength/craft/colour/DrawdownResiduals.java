package afterlength.craft.colour;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.util.Pair;

/**
 * What the fit of a colorant makes small: for every film and wavelength the reflectance counted minus measured, in units of noise;
 * then the bends of log K and log S along the wavelengths; then how far log S is from its guess. Unknowns: log K, then log S.
 */
final class DrawdownResiduals {
    /** A bend of log K by this much weighs as one standard deviation. Our own choice, tried on invented colorants. */
    private static final double BEND_OF_ABSORPTION = 0.25;

    private static final double BEND_OF_SCATTER = 0.03;

    /** How loosely log S is held to its guess: a factor of about seven either way. */
    private static final double SPREAD_OF_SCATTER = 2;

    private static final double NUDGE = 1e-6;
    private static final double GUESSED_ABSORPTION = 0.3;
    private static final double GUESSED_SCATTER = 0.03;

    private final List<Drawdown> drawdowns;
    private final double noise;
    private final Saunderson surface;
    private final Wavelengths wavelengths;
    private final int count;
    private final double thickness;
    private final double[][] innerGrounds;

    DrawdownResiduals(List<Drawdown> drawdowns, double noise, Saunderson surface) {
        if (drawdowns.size() < 2) {
            throw new IllegalArgumentException("a colorant needs two drawdowns or more; there are " + drawdowns.size());
        }
        this.drawdowns = List.copyOf(drawdowns);
        this.noise = noise;
        this.surface = surface;
        wavelengths = drawdowns.get(0).film().wavelengths();
        for (Drawdown drawdown : drawdowns) {
            if (!drawdown.film().wavelengths().equals(wavelengths)
                    || !drawdown.ground().wavelengths().equals(wavelengths)) {
                throw new IllegalArgumentException("the drawdowns are given at different wavelengths");
            }
        }
        count = wavelengths.count();
        thickness =
                drawdowns.stream().mapToDouble(Drawdown::thickness_um).average().orElseThrow();
        innerGrounds = drawdowns.stream()
                .map(one -> surface.inner(one.ground()).values())
                .toArray(double[][]::new);
    }

    int size() {
        return drawdowns.size() * count + 2 * (count - 2) + count;
    }

    RealVector start() {
        RealVector start = new ArrayRealVector(2 * count);
        for (int i = 0; i < count; i++) {
            start.setEntry(i, Math.log(GUESSED_ABSORPTION / thickness));
            start.setEntry(count + i, Math.log(GUESSED_SCATTER / thickness));
        }
        return start;
    }

    Colorant colorant(String name, RealVector unknowns) {
        double[] logs = unknowns.toArray();
        Spectrum absorption = Spectrum.of(wavelengths, Arrays.copyOf(logs, count));
        Spectrum scatter = Spectrum.of(wavelengths, Arrays.copyOfRange(logs, count, 2 * count));
        return new Colorant(name, absorption.map(Math::exp), scatter.map(Math::exp));
    }

    Pair<RealVector, RealMatrix> valueAndSlopes(RealVector unknowns) {
        RealVector value = new ArrayRealVector(size());
        RealMatrix slopes = new Array2DRowRealMatrix(size(), 2 * count);
        int row = writeFilms(unknowns, value, slopes);
        row = writeBends(unknowns, 0, BEND_OF_ABSORPTION, row, value, slopes);
        row = writeBends(unknowns, count, BEND_OF_SCATTER, row, value, slopes);
        writeGuess(unknowns, row, value, slopes);
        return new Pair<>(value, slopes);
    }

    private int writeFilms(RealVector unknowns, RealVector value, RealMatrix slopes) {
        int row = 0;
        for (int film = 0; film < drawdowns.size(); film++) {
            for (int i = 0; i < count; i++, row++) {
                double logK = unknowns.getEntry(i);
                double logS = unknowns.getEntry(count + i);
                double here = film(film, i, logK, logS);
                value.setEntry(row, (here - drawdowns.get(film).film().at(i)) / noise);
                slopes.setEntry(row, i, (film(film, i, logK + NUDGE, logS) - here) / NUDGE / noise);
                slopes.setEntry(row, count + i, (film(film, i, logK, logS + NUDGE) - here) / NUDGE / noise);
            }
        }
        return row;
    }

    private double film(int film, int i, double logK, double logS) {
        return surface.measured(KubelkaMunk.overGround(
                Math.exp(logK), Math.exp(logS), drawdowns.get(film).thickness_um(), innerGrounds[film][i]));
    }

    private int writeBends(
            RealVector unknowns, int from, double spread, int firstRow, RealVector value, RealMatrix slopes) {
        int row = firstRow;
        for (int i = from + 1; i < from + count - 1; i++, row++) {
            double bend = unknowns.getEntry(i - 1) - 2 * unknowns.getEntry(i) + unknowns.getEntry(i + 1);
            value.setEntry(row, bend / spread);
            slopes.setEntry(row, i - 1, 1 / spread);
            slopes.setEntry(row, i, -2 / spread);
            slopes.setEntry(row, i + 1, 1 / spread);
        }
        return row;
    }

    private void writeGuess(RealVector unknowns, int firstRow, RealVector value, RealMatrix slopes) {
        double guess = Math.log(GUESSED_SCATTER / thickness);
        for (int i = 0; i < count; i++) {
            value.setEntry(firstRow + i, (unknowns.getEntry(count + i) - guess) / SPREAD_OF_SCATTER);
            slopes.setEntry(firstRow + i, count + i, 1 / SPREAD_OF_SCATTER);
        }
    }
}
