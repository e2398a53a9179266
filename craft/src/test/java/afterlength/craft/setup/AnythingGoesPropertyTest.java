package afterlength.craft.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Whatever numbers are typed, the answer is a shape of finite numbers or a list of problems, never a fault. */
class AnythingGoesPropertyTest {
    private static final int CASES = 10_000;
    private static final double[] ODD = {
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        0,
        -0.0,
        -1,
        1e-300,
        1e-9,
        1e9,
        1e300,
        Double.MAX_VALUE
    };

    /** Mostly about right, now and then far off, seldom absurd. */
    private static double about(double usual, SplittableRandom random) {
        int kind = random.nextInt(30);
        if (kind == 0) {
            return ODD[random.nextInt(ODD.length)];
        }
        return kind < 4 ? usual * random.nextDouble(0, 4) : usual * random.nextDouble(0.9, 1.1);
    }

    private static BridgeInputs anything(SplittableRandom random) {
        int count = random.nextInt(12) == 0 ? random.nextInt(0, 9) : 4;
        return new BridgeInputs(
                about(328, random),
                new Board(
                        about(270, random),
                        about(42, random),
                        random.nextBoolean() ? null : about(42, random),
                        random.nextBoolean() ? null : new BassTreble(about(0.7, random), about(0.3, random))),
                spacing(16.5, count, random),
                spacing(33.5, count, random),
                new BassTreble(about(0.45, random), about(0.3, random)),
                new BassTreble(about(5.5, random), about(3.5, random)),
                random.nextBoolean() ? ClearanceConvention.SQUARE : ClearanceConvention.UPRIGHT,
                about(27, random),
                about(0.3333, random),
                crown(random),
                IntStream.range(0, count).mapToObj(i -> string(i, random)).toList(),
                random.nextBoolean() ? null : new Waist(about(112, random), about(11, random)));
    }

    private static FittedString string(int i, SplittableRandom random) {
        StringPull pull = random.nextBoolean()
                ? new StringPull.Tension(about(55, random))
                : new StringPull.DensityAndPitch(about(1, random), about(440, random));
        return new FittedString(
                random.nextInt(40) == 0 ? " " : "string " + i,
                about(0.6, random),
                random.nextInt(10) == 0 ? new StringPull.Unknown() : pull);
    }

    private static StringSpacing spacing(double usual_mm, int count, SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> new StringSpacing.ByGaps(about(usual_mm, random));
            case 1 ->
                new StringSpacing.Given(IntStream.range(0, count)
                        .mapToObj(i -> about(usual_mm * (i / 3.0 - 0.5), random))
                        .toList());
            default -> new StringSpacing.ByCentres(about(usual_mm, random));
        };
    }

    private static Crown crown(SplittableRandom random) {
        return switch (random.nextInt(6)) {
            case 0 -> new EvenPlayCrown();
            case 1 ->
                new TemplateCrown(DoubleStream.iterate(-25, y -> y <= 25, y -> y + 5)
                        .mapToObj(y -> new CrossPoint(about(y, random), about(5 - y * y / 84, random)))
                        .toList());
            default -> new RadiusCrown(about(42, random));
        };
    }

    @Test
    void everyQuestionIsAnsweredOrRefused() {
        int shapes = 0;
        for (long seed = 1; seed <= CASES; seed++) {
            BridgeInputs inputs = anything(new SplittableRandom(seed));
            String name = "seed " + seed;
            try {
                BridgeAnswer answer = Bridge.shape(inputs);
                if (answer instanceof BridgeShape shape) {
                    shapes++;
                    look(shape, new SplittableRandom(-seed));
                } else {
                    assertThat(((BridgeRefused) answer).problems()).as(name).isNotEmpty();
                }
            } catch (RuntimeException fault) {
                throw new AssertionError(name + " " + inputs, fault);
            }
        }
        assertThat(shapes).isGreaterThan(CASES / 10);
    }

    /** Every number of a shape is finite, or its quantity would have refused it. */
    private static void look(BridgeShape shape, SplittableRandom random) {
        assertThat(shape.highest().mm())
                .isGreaterThanOrEqualTo(shape.centreHeight().mm() - 1e-9);
        assertThat(shape.heightPlusMinus().mm()).isPositive();
        assertThat(shape.crownPoints(9)).allMatch(point -> Double.isFinite(point.y_mm() + point.z_mm()));
        assertThat(shape.boardArcAtEnd(21, 9)).allMatch(point -> Double.isFinite(point.z_mm()));
        OneMillimetre.of(shape);
        NutShape.of(shape);
        String any = shape.strings().get(1).name();
        BowPlace place = new BowPlace(about(30, random), about(1, random), Map.of(any, about(164, random)));
        if (BowClearance.at(shape, place) instanceof BowReading reading) {
            assertThat(reading.strings().get(1).findClearAngle()).isPresent();
        }
        BowMap.of(shape, new BowMapAxes(List.of(0, 12), List.of(about(30, random)), List.of(about(1, random))));
        BridgeLoad.of(
                shape,
                new TailEnd(about(55, random), about(21, random), about(20, random), about(7, random)),
                about(15, random));
    }
}
