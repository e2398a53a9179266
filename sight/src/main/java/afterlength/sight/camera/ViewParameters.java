package afterlength.sight.camera;

import java.util.Arrays;

/**
 * A view as ten numbers: logarithm of the focal length, k1, the two coordinates of the centre, three of a small turn from a
 * first pose, three of the shift. Everything that is solved for, and everything the uncertainty is about.
 */
final class ViewParameters {
    static final int COUNT = 10;

    /** The first four belong to the lens, which several pictures can share. */
    static final int OF_LENS = 4;

    private static final double[] STEPS = {1e-6, 1e-6, 1e-2, 1e-2, 1e-6, 1e-6, 1e-6, 1e-3, 1e-3, 1e-3};

    private final Turn first;
    private final double[] values;

    ViewParameters(Turn first, double... values) {
        this.first = first;
        this.values = values;
    }

    View view() {
        double[] v = values;
        Lens lens = new Lens(Math.exp(v[0]), v[1], v[2], v[3]);
        return new View(lens, Turn.around(v[4], v[5], v[6]).after(first), new double[] {v[7], v[8], v[9]});
    }

    ViewParameters with(double[] other) {
        return new ViewParameters(first, other);
    }

    /** The view with one parameter changed, for slopes. */
    View movedView(int parameter, double by) {
        double[] moved = values.clone();
        moved[parameter] += by;
        return with(moved).view();
    }

    double[] values() {
        return values.clone();
    }

    double[] ofLens() {
        return Arrays.copyOf(values, OF_LENS);
    }

    double[] ofPose() {
        return Arrays.copyOfRange(values, OF_LENS, COUNT);
    }

    /** A step for numerical slopes: far above rounding, far below any bend. */
    static double step(int parameter) {
        return STEPS[parameter];
    }

    static double[] steps() {
        return STEPS.clone();
    }
}
