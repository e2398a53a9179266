package afterlength.craft.setup;

/**
 * One string as a straight line from nut to bridge over its board, in the numbers the bow is reckoned with.
 *
 * @param scoop_mm of the board under this string at mid-length
 */
record StringRun(
        Board board,
        double speakingLength_mm,
        double nutY_mm,
        double nutUnderside_mm,
        double bridgeY_mm,
        double bridgeUnderside_mm,
        double diameter_mm,
        double scoop_mm) {

    static StringRun of(BridgeShape shape, int string) {
        BridgeInputs inputs = shape.inputs();
        SeatedString seated = shape.strings().get(string);
        return new StringRun(
                inputs.board(),
                inputs.speakingLength_mm(),
                seated.nutY().mm(),
                seated.nutUnderside().mm(),
                seated.bridgeY().mm(),
                seated.underside().mm(),
                inputs.strings().get(string).diameter_mm(),
                inputs.board().scoopOfString_mm(string, shape.strings().size()));
    }

    double y_mm(double x_mm) {
        return nutY_mm + (bridgeY_mm - nutY_mm) * x_mm / speakingLength_mm;
    }

    double openUnderside_mm(double x_mm) {
        return nutUnderside_mm + (bridgeUnderside_mm - nutUnderside_mm) * x_mm / speakingLength_mm;
    }

    /** The board surface right under the string; x between nut and board end. */
    double boardUnder_mm(double x_mm) {
        return board.surface_mm(x_mm, y_mm(x_mm), scoop_mm);
    }
}
