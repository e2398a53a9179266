package afterlength.craft.geometry;

/**
 * One instrument to draw: its body and its fittings, with defaults as commonly found (docs/sources.md#instrument-proportions).
 * They serve pictures. Work on a real instrument starts from its own measures.
 */
public record InstrumentShape(BodyShape body, FittingShape fittings) {
    private static final double VIOLIN_BODY_MM = 355;

    public static InstrumentShape violin() {
        return new InstrumentShape(
                BodyShape.of(VIOLIN_BODY_MM, 168, 110, 207, 195),
                new FittingShape(130, 270, 24, 42.5, 16.5, 33.5, 41, 33, 55, 109, 78, 42, 30, 106));
    }

    public static InstrumentShape viola() {
        return new InstrumentShape(
                BodyShape.of(405, 190, 130, 240, 220),
                new FittingShape(147, 306, 25, 47, 17.5, 37, 47, 37, 62, 122, 87, 50, 38, 120));
    }

    public static InstrumentShape cello() {
        return new InstrumentShape(
                BodyShape.of(755, 343, 232, 437, 400),
                new FittingShape(280, 582, 32, 62, 22, 47, 90, 90, 115, 238, 140, 94, 118, 205));
    }

    public static InstrumentShape bass() {
        return new InstrumentShape(
                BodyShape.of(1110, 510, 370, 660, 610),
                new FittingShape(445, 850, 42, 88, 31, 85, 150, 160, 178, 325, 212, 160, 200, 285));
    }

    /** The whole instrument larger or smaller, as for three-quarter sizes. */
    public InstrumentShape withBodyLength(double length_mm) {
        double factor = length_mm / body.length_mm();
        return new InstrumentShape(body.scaled(factor), fittings.scaled(factor));
    }

    /** Size against a violin: what thickness of edge, purfling and pegs goes by. Grows slower than the body does. */
    public double stoutness() {
        return Math.pow(body.length_mm() / VIOLIN_BODY_MM, 0.55);
    }
}
