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

    static StringRun[] all(BridgeShape shape) {
        StringRun[] runs = new StringRun[shape.strings().size()];
        for (int i = 0; i < runs.length; i++) {
            runs[i] = of(shape, i);
        }
        return runs;
    }

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

    /** A string whose height on the bridge is being tried out. */
    static StringRun of(BridgeInputs inputs, StringLayout layout, int string, double bridgeUnderside_mm) {
        return new StringRun(
                inputs.board(),
                inputs.speakingLength_mm(),
                layout.nutY_mm(string),
                layout.nutUnderside_mm(string),
                layout.bridgeY_mm(string),
                bridgeUnderside_mm,
                inputs.strings().get(string).diameter_mm(),
                inputs.board().scoopOfString_mm(string, layout.count()));
    }

    double y_mm(double x_mm) {
        return nutY_mm + (bridgeY_mm - nutY_mm) * x_mm / speakingLength_mm;
    }

    double openUnderside_mm(double x_mm) {
        return nutUnderside_mm + (bridgeUnderside_mm - nutUnderside_mm) * x_mm / speakingLength_mm;
    }

    boolean hasBoardUnder(double x_mm) {
        return Math.abs(y_mm(x_mm)) < board.radiusAt_mm(x_mm);
    }

    /** The board surface right under the string; x between nut and board end. */
    double boardUnder_mm(double x_mm) {
        return board.surface_mm(x_mm, y_mm(x_mm), scoop_mm);
    }

    /** Cut across at this distance from the bridge, not stopped. */
    Disc open(double distance_mm) {
        double x_mm = speakingLength_mm - distance_mm;
        return new Disc(y_mm(x_mm), openUnderside_mm(x_mm) + diameter_mm / 2, diameter_mm / 2);
    }

    /** The same when a finger holds the string on the board, S from the bridge; the bow lies between finger and bridge. */
    Disc stopped(double stopped_mm, double distance_mm) {
        double x_mm = speakingLength_mm - distance_mm;
        double finger_mm = boardUnder_mm(speakingLength_mm - stopped_mm);
        double underside_mm = bridgeUnderside_mm + (finger_mm - bridgeUnderside_mm) * distance_mm / stopped_mm;
        return new Disc(y_mm(x_mm), underside_mm + diameter_mm / 2, diameter_mm / 2);
    }

    /** The same string with its bridge end at another height. */
    StringRun withBridgeUnderside_mm(double other_mm) {
        return new StringRun(
                board, speakingLength_mm, nutY_mm, nutUnderside_mm, bridgeY_mm, other_mm, diameter_mm, scoop_mm);
    }
}
