package afterlength.craft.colour;

import java.util.List;

/**
 * The colour of a film mixed of some colorants over one ground, seen through its surface. Amounts add up: K and S of the mixture
 * are the sums of amount times K and S of each.
 */
final class FilmOnGround {
    private final Saunderson surface;
    private final double[] innerGround;
    private final double[][] absorption;
    private final double[][] scatter;

    /** @param ground as an instrument sees it, sealed */
    FilmOnGround(Spectrum ground, List<Colorant> colorants, Saunderson surface) {
        this.surface = surface;
        innerGround = surface.inner(ground).values();
        absorption = colorants.stream().map(one -> one.absorption().values()).toArray(double[][]::new);
        scatter = colorants.stream().map(one -> one.scatter().values()).toArray(double[][]::new);
    }

    int colorants() {
        return absorption.length;
    }

    int wavelengths() {
        return innerGround.length;
    }

    /** Reflectances as an instrument sees them, written into an array of that length. */
    void measure(int[] which, double[] amounts, double[] reflectances) {
        for (int i = 0; i < reflectances.length; i++) {
            double k = 0;
            double s = 0;
            for (int n = 0; n < which.length; n++) {
                k += amounts[n] * absorption[which[n]][i];
                s += amounts[n] * scatter[which[n]][i];
            }
            reflectances[i] = surface.measured(KubelkaMunk.overGround(k, s, 1, innerGround[i]));
        }
    }
}
