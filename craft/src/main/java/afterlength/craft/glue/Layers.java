package afterlength.craft.glue;

import afterlength.craft.wood.WoodHeat;

/**
 * The film on the plate cut into slices: their heat for each square metre, and how easily heat passes between neighbours. The
 * slices of the film are even; those of the wood begin as thin as the film's and grow by a constant factor away from the joint,
 * where everything happens slowly.
 */
final class Layers {
    private final double[] heat_J_m2K;
    private final double[] passing_W_m2K;
    private final int filmSlices;

    private Layers(double[] heat_J_m2K, double[] passing_W_m2K, int filmSlices) {
        this.heat_J_m2K = heat_J_m2K;
        this.passing_W_m2K = passing_W_m2K;
        this.filmSlices = filmSlices;
    }

    static Layers of(GlueLiquid glue, double film_m, WoodHeat wood, double plate_m, int filmSlices, int woodSlices) {
        double[] thickness_m = thicknesses_m(film_m, plate_m, filmSlices, woodSlices);
        int count = thickness_m.length;
        double[] heat = new double[count];
        double[] half = new double[count];
        for (int n = 0; n < count; n++) {
            boolean film = n < filmSlices;
            heat[n] = thickness_m[n]
                    * (film ? glue.density_kg_m3() * glue.heat_J_kgK() : wood.density_kg_m3() * wood.heat_J_kgK());
            half[n] = thickness_m[n] / 2 / (film ? glue.conductivity_W_mK() : wood.conductivity_W_mK());
        }
        double[] passing = new double[count];
        for (int n = 0; n + 1 < count; n++) {
            passing[n] = 1 / (half[n] + half[n + 1]);
        }
        passing[count - 1] = half[count - 1];
        return new Layers(heat, passing, filmSlices);
    }

    private static double[] thicknesses_m(double film_m, double plate_m, int filmSlices, int woodSlices) {
        double[] thickness_m = new double[filmSlices + woodSlices];
        double first_m = Math.min(film_m / filmSlices, plate_m / woodSlices);
        double growth = growth(plate_m / first_m, woodSlices);
        double wood_m = first_m;
        for (int n = 0; n < thickness_m.length; n++) {
            thickness_m[n] = n < filmSlices ? film_m / filmSlices : wood_m;
            wood_m *= n < filmSlices ? 1 : growth;
        }
        return thickness_m;
    }

    /** The factor with which so many slices, the first one unit thick, fill the whole. */
    private static double growth(double whole, int slices) {
        double low = 1;
        double high = 4;
        for (int halving = 0; halving < 100; halving++) {
            double middle = (low + high) / 2;
            if (sum(middle, slices) > whole) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private static double sum(double growth, int slices) {
        return growth - 1 < 1e-12 ? slices : (Math.pow(growth, slices) - 1) / (growth - 1);
    }

    int count() {
        return heat_J_m2K.length;
    }

    int filmSlices() {
        return filmSlices;
    }

    double heat_J_m2K(int slice) {
        return heat_J_m2K[slice];
    }

    /** From this slice to the next. */
    double passing_W_m2K(int slice) {
        return passing_W_m2K[slice];
    }

    /** From the last slice to air that takes up {@code h} W/m²K; nothing passes when {@code h} is zero. */
    double toAir_W_m2K(double airSide_W_m2K) {
        return airSide_W_m2K == 0 ? 0 : 1 / (passing_W_m2K[count() - 1] + 1 / airSide_W_m2K);
    }
}
