package afterlength.craft.setup;

import java.util.List;
import java.util.SplittableRandom;

/** Instruments on the bench of these tests: the worked examples, and any number of drawn ones. */
public final class Bench {
    private Bench() {}

    /** docs/sources.md#setup-worked-example, the violin; strings of one thickness so that only the geometry speaks. */
    static BridgeInputs violin() {
        return violin(0.8, 0.7, 0.6, 0.26);
    }

    static BridgeInputs violin(double g_mm, double d_mm, double a_mm, double e_mm) {
        return new BridgeInputs(
                328,
                Board.ofOneRadius(270, 42),
                new StringSpacing.ByCentres(16.5),
                new StringSpacing.ByCentres(33.5),
                new BassTreble(0.45, 0.30),
                new BassTreble(5.5, 3.5),
                ClearanceConvention.SQUARE,
                27,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(42),
                List.of(
                        FittedString.ofTension("G", g_mm, 44),
                        FittedString.ofTension("D", d_mm, 45),
                        FittedString.ofTension("A", a_mm, 55),
                        FittedString.ofTension("E", e_mm, 75)),
                null);
    }

    /** The same, with a waist for the outer limits and the scoop of the survey. */
    public static BridgeInputs violinWithBody() {
        BridgeInputs violin = violin();
        Board board = violin.board().withScoop(new BassTreble(0.75, 0.25));
        return violin.change().board(board).waist(new Waist(112, 11.5)).done();
    }

    /** docs/sources.md#setup-worked-example, the cello with gut strings. */
    static BridgeInputs cello() {
        return new BridgeInputs(
                690,
                Board.ofOneRadius(580, 62),
                new StringSpacing.ByCentres(22),
                new StringSpacing.ByCentres(47),
                new BassTreble(0.75, 0.5),
                new BassTreble(8.0, 5.5),
                ClearanceConvention.SQUARE,
                81,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(62),
                List.of(
                        FittedString.ofTension("C", 1.6, 135),
                        FittedString.ofTension("G", 1.3, 135),
                        FittedString.ofTension("D", 1.1, 130),
                        FittedString.ofTension("A", 0.9, 150)),
                new Waist(235, 25));
    }

    public static BridgeShape shape(BridgeInputs inputs) {
        BridgeAnswer answer = Bridge.shape(inputs);
        if (answer instanceof BridgeShape shape) {
            return shape;
        }
        throw new AssertionError(answer.toString());
    }

    /** A possible instrument between a small violin and a large cello, with three to six strings. */
    static BridgeInputs drawn(SplittableRandom random) {
        int count = random.nextInt(3, 7);
        double length_mm = random.nextDouble(250, 720);
        double size = length_mm / 328;
        double nut_mm = count * 3.8 * Math.sqrt(size) * random.nextDouble(0.95, 1.2);
        double bridge_mm = nut_mm * random.nextDouble(1.8, 2.2);
        double radius_mm = bridge_mm * random.nextDouble(1.1, 1.6);
        return new BridgeInputs(
                length_mm,
                new Board(
                        length_mm * random.nextDouble(0.8, 0.85),
                        radius_mm,
                        random.nextDouble(0.8, 1.1) * radius_mm,
                        null),
                random.nextBoolean() ? new StringSpacing.ByCentres(nut_mm) : new StringSpacing.ByGaps(nut_mm),
                random.nextBoolean() ? new StringSpacing.ByCentres(bridge_mm) : new StringSpacing.ByGaps(bridge_mm),
                new BassTreble(random.nextDouble(0.2, 0.8), random.nextDouble(0.2, 0.8)),
                new BassTreble(random.nextDouble(4, 8), random.nextDouble(2.5, 6)),
                random.nextBoolean() ? ClearanceConvention.SQUARE : ClearanceConvention.UPRIGHT,
                27 * size,
                random.nextDouble(0, 0.6),
                new RadiusCrown(radius_mm * random.nextDouble(0.9, 1.2)),
                random.ints(count, 0, 1_000_000)
                        .mapToObj(name -> FittedString.ofTension(
                                "string " + name, random.nextDouble(0.25, 1.2), random.nextDouble(40, 120)))
                        .toList(),
                new Waist(bridge_mm * random.nextDouble(3, 3.6), random.nextDouble(5, 15) * size));
    }
}
