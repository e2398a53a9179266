package afterlength.craft.setup;

/**
 * What one millimetre somewhere else does to the clearance under the outer strings at the board end, the bridge staying as it is.
 * Positive numbers are more clearance.
 *
 * <p>Seen from the board line: when the neck drops and the projection falls, or when the arch rises and takes the bridge with it,
 * the bridge end of the string goes up by a millimetre against the board, and the board end gets F/L of it. Nut and board turn
 * with the neck, so where it gives way does not matter. Lowering the nut takes 1 - F/L. Under the outer strings a clearance that
 * is measured square grows a little less than one that is measured upright; that is reckoned in.
 *
 * @param projectionFalls by one millimetre
 * @param archRises by one millimetre; the measured projection falls by as much
 * @param nutLowered by one millimetre
 */
public record OneMillimetre(BassTreble projectionFalls, BassTreble archRises, BassTreble nutLowered) {
    /** Small enough for a slope, large enough for the digits of a double. */
    private static final double STEP_mm = 1e-4;

    public static OneMillimetre of(BridgeShape shape) {
        double lever = shape.inputs().board().length_mm() / shape.inputs().speakingLength_mm();
        BassTreble up = atBoardEnd(shape, lever);
        return new OneMillimetre(up, up, atBoardEnd(shape, lever - 1));
    }

    private static BassTreble atBoardEnd(BridgeShape shape, double string_mm) {
        return new BassTreble(
                slope(shape, 0, string_mm), slope(shape, shape.strings().size() - 1, string_mm));
    }

    private static double slope(BridgeShape shape, int string, double string_mm) {
        StringRun run = StringRun.of(shape, string);
        Board board = run.board();
        double y_mm = run.y_mm(board.length_mm());
        double z_mm = run.openUnderside_mm(board.length_mm());
        ClearanceConvention convention = shape.inputs().clearanceConvention();
        double step_mm = STEP_mm * string_mm;
        return (convention.clearance_mm(board.radius_mm(), y_mm, z_mm + step_mm)
                        - convention.clearance_mm(board.radius_mm(), y_mm, z_mm - step_mm))
                / (2 * STEP_mm);
    }
}
