package afterlength.start.demo;

import afterlength.craft.geometry.InstrumentShape;
import java.util.ArrayList;
import java.util.List;

/**
 * One invented instrument as the painter knows it: shape, wood, varnish, fittings, state.
 *
 * @param ring breadth of the year rings against a usual one
 * @param flame breadth of the maple's flames in mm
 * @param fittings wood of tailpiece and pegs
 * @param crack whether the belly is cracked at the treble sound-hole
 * @param isSetUpAnew new bridge and clean strings
 */
record DemoInstrument(
        InstrumentShape shape,
        long seed,
        double ring,
        double flame,
        double flameSlope,
        double flameStrength,
        Varnish varnish,
        FittingWood fittings,
        Crack crack,
        boolean isSetUpAnew) {
    /** The viola of about 1905, as it came out of its case and as it leaves. */
    static DemoInstrument viola(boolean after) {
        Noise noise = new Noise(1905);
        List<Wear> worn = new ArrayList<>(wornByPlaying(InstrumentShape.viola(), 0.85));
        worn.add(new Wear(84, 42, 26, 40, 0.9));
        Varnish varnish = new Varnish(0.46, 1.14, 2.35, worn, after ? 0.30 : 0.95, noise);
        return new DemoInstrument(
                InstrumentShape.viola(),
                1905,
                1.0,
                9.0,
                0.16,
                1,
                varnish,
                FittingWood.EBONY,
                after ? Crack.CLOSED : Crack.OPEN,
                after);
    }

    static DemoInstrument smallViolin() {
        InstrumentShape shape = InstrumentShape.violin().withBodyLength(335);
        Varnish varnish = new Varnish(0.30, 0.85, 1.75, wornByPlaying(shape, 0.5), 0.5, new Noise(31));
        return new DemoInstrument(shape, 31, 1.25, 7, 0.1, 0.6, varnish, FittingWood.ROSEWOOD, Crack.NONE, true);
    }

    static DemoInstrument redViolin() {
        InstrumentShape shape = InstrumentShape.violin();
        Varnish varnish = new Varnish(0.62, 2.0, 2.7, wornByPlaying(shape, 0.6), 0.4, new Noise(77));
        return new DemoInstrument(shape, 77, 0.85, 8, -0.14, 1.1, varnish, FittingWood.BOXWOOD, Crack.NONE, true);
    }

    static DemoInstrument cello() {
        InstrumentShape shape = InstrumentShape.cello();
        Varnish varnish = new Varnish(0.52, 1.28, 2.3, wornByPlaying(shape, 0.8), 0.8, new Noise(412));
        return new DemoInstrument(shape, 412, 1.55, 15, 0.1, 0.9, varnish, FittingWood.EBONY, Crack.NONE, true);
    }

    static DemoInstrument paleViolin() {
        InstrumentShape shape = InstrumentShape.violin();
        Varnish varnish = new Varnish(0.13, 0.44, 1.12, wornByPlaying(shape, 0.25), 0.2, new Noise(2003));
        return new DemoInstrument(shape, 2003, 0.9, 6.5, 0.08, 0.9, varnish, FittingWood.ROSEWOOD, Crack.NONE, true);
    }

    static DemoInstrument darkViolin() {
        InstrumentShape shape = InstrumentShape.violin();
        Varnish varnish = new Varnish(0.98, 1.80, 2.7, wornByPlaying(shape, 0.85), 1, new Noise(1790));
        return new DemoInstrument(shape, 1790, 0.75, 7.5, 0.2, 0.8, varnish, FittingWood.EBONY, Crack.NONE, false);
    }

    Noise noise() {
        return varnish.noise();
    }

    /** Size against a violin. */
    double size() {
        return shape.body().length_mm() / 355;
    }

    /** Where chin, left hand and cloth take varnish off. */
    private static List<Wear> wornByPlaying(InstrumentShape shape, double depth) {
        double size = shape.body().length_mm() / 355;
        double half_mm = shape.body().lowerWidth_mm() / 2;
        return List.of(
                new Wear(shape.body().upperWidth_mm() / 2, 55 * size, 20 * size, 42 * size, depth),
                new Wear(-half_mm * 0.52, 318 * size, 42 * size, 40 * size, depth * 0.75),
                new Wear(half_mm * 0.55, 330 * size, 34 * size, 26 * size, depth * 0.6),
                new Wear(0, 300 * size, 20 * size, 60 * size, depth * 0.25),
                new Wear(-shape.body().middleWidth_mm() / 2, 170 * size, 10 * size, 30 * size, depth * 0.5));
    }
}
