package afterlength.workshop.retouch;

import afterlength.craft.colour.Spectrum;
import afterlength.craft.colour.Wavelengths;
import java.util.List;

/**
 * The wavelengths at which the shop keeps every colour, since a recipe needs all of them alike: 400 to 700 nm by 10, which every
 * instrument for colours gives. Between two wavelengths of a file the line is straight.
 */
final class PaletteGrid {
    static final Wavelengths WAVELENGTHS = new Wavelengths(400, 10, 31);

    /** A coarser file would lose the bends of a red or a yellow. */
    static final double COARSEST_NM = 20;

    private PaletteGrid() {}

    /** Whether a file with these wavelengths, in rising order, tells enough. */
    static boolean coveredBy(List<Double> at_nm) {
        boolean fine = true;
        for (int n = 1; n < at_nm.size(); n++) {
            fine &= at_nm.get(n) - at_nm.get(n - 1) <= COARSEST_NM;
        }
        return fine && at_nm.size() > 1 && at_nm.get(0) <= 400 && at_nm.get(at_nm.size() - 1) >= 700;
    }

    static Spectrum of(List<Double> at_nm, List<Double> values) {
        double[] kept = new double[WAVELENGTHS.count()];
        int below = 0;
        for (int n = 0; n < kept.length; n++) {
            double wanted_nm = WAVELENGTHS.first_nm() + n * WAVELENGTHS.step_nm();
            while (at_nm.get(below + 1) < wanted_nm) {
                below++;
            }
            double part = (wanted_nm - at_nm.get(below)) / (at_nm.get(below + 1) - at_nm.get(below));
            kept[n] = values.get(below) + part * (values.get(below + 1) - values.get(below));
        }
        return Spectrum.of(WAVELENGTHS, kept);
    }
}
