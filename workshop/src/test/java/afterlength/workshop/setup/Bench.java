package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.Crown;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringSpacing;
import afterlength.craft.setup.TemplateCrown;
import afterlength.craft.setup.Waist;
import java.util.List;

/** Instruments for these tests: the worked examples of docs/sources.md#setup-worked-example, and two with more strings. */
final class Bench {
    private Bench() {}

    static BridgeShape violin() {
        return shape(new BridgeInputs(
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
                strings("G", 0.8, "D", 0.72, "A", 0.66, "E", 0.26),
                null));
    }

    /** The violin with everything measured: scoop, waist, tensions. */
    static BridgeShape violinWithBody() {
        return violinWith(new RadiusCrown(42));
    }

    static BridgeShape violinWith(Crown crown) {
        BridgeInputs violin = violin().inputs();
        return shape(violin.change()
                .board(violin.board().withScoop(new BassTreble(0.75, 0.25)))
                .waist(new Waist(112, 11.5))
                .crown(crown)
                .strings(List.of(
                        FittedString.ofTension("G", 0.8, 44),
                        FittedString.ofTension("D", 0.72, 45),
                        FittedString.ofTension("A", 0.66, 55),
                        FittedString.ofTension("E", 0.26, 75)))
                .done());
    }

    /** A template read off at seven points, a little flatter to the treble side. */
    static TemplateCrown ownTemplate() {
        return new TemplateCrown(List.of(
                new CrossPoint(-22, 0),
                new CrossPoint(-14, 4.2),
                new CrossPoint(-6, 6.4),
                new CrossPoint(0, 6.9),
                new CrossPoint(8, 6.0),
                new CrossPoint(15, 3.7),
                new CrossPoint(22, 0.3)));
    }

    static BridgeShape threeStrings() {
        return shape(new BridgeInputs(
                310,
                Board.ofOneRadius(255, 40),
                new StringSpacing.ByCentres(12),
                new StringSpacing.ByCentres(24),
                new BassTreble(0.45, 0.30),
                new BassTreble(5, 3.5),
                ClearanceConvention.UPRIGHT,
                26,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(40),
                strings("D", 0.8, "A", 0.7, "E", 0.3),
                null));
    }

    static BridgeShape cello() {
        return shape(new BridgeInputs(
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
                strings("C", 1.6, "G", 1.3, "D", 1.1, "A", 0.9),
                null));
    }

    static BridgeShape sixStrings() {
        return shape(new BridgeInputs(
                345,
                Board.ofOneRadius(284, 38),
                new StringSpacing.ByCentres(25),
                new StringSpacing.ByCentres(46),
                new BassTreble(0.45, 0.30),
                new BassTreble(6, 4),
                ClearanceConvention.SQUARE,
                29,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(36),
                strings("low F", 1.2, "C", 1.1, "G", 0.9, "D", 0.8, "A", 0.7, "E", 0.3),
                null));
    }

    static BridgeShape fiveStrings() {
        return shape(new BridgeInputs(
                325,
                Board.ofOneRadius(268, 40),
                new StringSpacing.ByCentres(20),
                new StringSpacing.ByCentres(36),
                new BassTreble(0.45, 0.30),
                new BassTreble(6, 3.5),
                ClearanceConvention.SQUARE,
                25,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(38),
                strings("C", 1.1, "G", 0.8, "D", 0.72, "A", 0.66, "E", 0.26),
                null));
    }

    static BridgeShape shape(BridgeInputs inputs) {
        if (Bridge.shape(inputs) instanceof BridgeShape shape) {
            return shape;
        }
        throw new AssertionError(Bridge.shape(inputs).toString());
    }

    private static List<FittedString> strings(Object... namesAndDiameters) {
        return java.util.stream.IntStream.range(0, namesAndDiameters.length / 2)
                .mapToObj(i -> FittedString.ofDiameter(
                        (String) namesAndDiameters[2 * i], ((Number) namesAndDiameters[2 * i + 1]).doubleValue()))
                .toList();
    }
}
