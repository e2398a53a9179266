package afterlength.craft.glue;

import java.util.Arrays;

/**
 * The heat equation in a film of glue on a plate of limited thickness, solved step by step: heat passes from slice to slice ({@link
 * Layers}), nothing passes the free face of the film, and the far face of the plate gives off heat to the air of the room. Each step
 * is a trapezoid followed by a two-step backward difference (TR-BDF2), which neither rings at the sudden start nor loses heat; the
 * steps grow with the time passed. Doubling slices and halving steps moves the film by less than 0.05 °C (a test holds it there).
 * Left out: evaporation, the latent heat of gelling, heat that flows sideways.
 */
final class PlateCooling {
    static final int FILM_SLICES = 8;
    static final int WOOD_SLICES = 48;

    /** Each step is this part of the time passed; the first ones are the least. */
    static final double GROWTH = 0.03;

    private static final double GAMMA = 2 - Math.sqrt(2);

    private final Layers layers;
    private final double toAir_W_m2K;
    private final double room_C;
    private final double[] now_C;
    private final double[] right_C;
    private final double[] carried;
    private final double leastStep_s;
    private final double growth;
    private double time_s;

    PlateCooling(Layers layers, double glue_C, double wood_C, double room_C, double airSide_W_m2K, double growth) {
        this.layers = layers;
        this.room_C = room_C;
        this.growth = growth;
        toAir_W_m2K = layers.toAir_W_m2K(airSide_W_m2K);
        now_C = new double[layers.count()];
        right_C = new double[layers.count()];
        carried = new double[layers.count()];
        Arrays.fill(now_C, wood_C);
        Arrays.fill(now_C, 0, layers.filmSlices(), glue_C);
        // The time in which a slice beside the joint follows its neighbour: nothing happens faster.
        leastStep_s = layers.heat_J_m2K(0) / layers.passing_W_m2K(0);
    }

    double time_s() {
        return time_s;
    }

    /** The mean of the film. */
    double film_C() {
        double sum_C = 0;
        for (int n = 0; n < layers.filmSlices(); n++) {
            sum_C += now_C[n];
        }
        return sum_C / layers.filmSlices();
    }

    /** All heat above this temperature, joules for each square metre. */
    double heatAbove_J_m2(double reference_C) {
        double heat_J_m2 = 0;
        for (int n = 0; n < layers.count(); n++) {
            heat_J_m2 += layers.heat_J_m2K(n) * (now_C[n] - reference_C);
        }
        return heat_J_m2;
    }

    void advance() {
        double step_s = Math.max(leastStep_s * growth, growth * time_s);
        double[] before_C = now_C.clone();
        // Trapezoid over the part γ of the step …
        double part = GAMMA * step_s / 2;
        for (int n = 0; n < right_C.length; n++) {
            right_C[n] = layers.heat_J_m2K(n) * before_C[n] + part * gain_W_m2(before_C, n);
        }
        solve(part);
        // … then the backward difference over all of it.
        double older = (1 - GAMMA) * (1 - GAMMA) / (GAMMA * (2 - GAMMA));
        double newer = 1 / (GAMMA * (2 - GAMMA));
        for (int n = 0; n < right_C.length; n++) {
            right_C[n] = layers.heat_J_m2K(n) * (newer * now_C[n] - older * before_C[n]);
        }
        solve((1 - GAMMA) / (2 - GAMMA) * step_s);
        time_s += step_s;
    }

    /** Heat that flows into a slice. */
    private double gain_W_m2(double[] t_C, int n) {
        double gain = n == 0 ? 0 : layers.passing_W_m2K(n - 1) * (t_C[n - 1] - t_C[n]);
        return gain
                + (n + 1 == t_C.length
                        ? toAir_W_m2K * (room_C - t_C[n])
                        : layers.passing_W_m2K(n) * (t_C[n + 1] - t_C[n]));
    }

    /** Solves {@code heat·T − part·gain(T) = right} for the new temperatures, slice by slice forth and back. */
    private void solve(double part) {
        int last = right_C.length - 1;
        for (int n = 0; n <= last; n++) {
            double fromLeft = n == 0 ? 0 : part * layers.passing_W_m2K(n - 1);
            double toRight = part * (n == last ? toAir_W_m2K : layers.passing_W_m2K(n));
            double known = right_C[n] + (n == last ? toRight * room_C : 0);
            double pivot = layers.heat_J_m2K(n) + fromLeft + toRight - (n == 0 ? 0 : fromLeft * carried[n - 1]);
            carried[n] = n == last ? 0 : toRight / pivot;
            now_C[n] = (known + (n == 0 ? 0 : fromLeft * now_C[n - 1])) / pivot;
        }
        for (int n = last - 1; n >= 0; n--) {
            now_C[n] += carried[n] * now_C[n + 1];
        }
    }
}
