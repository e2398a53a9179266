package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;

/** The single measures of instrument and set-up, in the order of the question. */
final class ValueChecks {
    private static final Permitted SPEAKING_LENGTH = Permitted.from(50, 2000, "mm");
    private static final Permitted BOARD_LENGTH = Permitted.above(0, 2000, "mm");
    /** Part of the speaking length; no board is so short, and a slip of the decimal point is. */
    private static final double SHORTEST_BOARD = 0.1;

    private static final Permitted RADIUS = Permitted.above(0, 1e9, "mm");
    private static final Permitted CLEARANCE = Permitted.from(0, 50, "mm");
    private static final Permitted SCOOP = Permitted.from(0, 20, "mm");
    private static final Permitted PROJECTION = Permitted.above(0, 500, "mm");
    private static final Permitted GROOVE = Permitted.from(0, 1, "");
    private static final Permitted WAIST = Permitted.above(0, 1000, "mm");
    private static final Permitted EDGE_DROP = Permitted.from(0, 200, "mm");

    private static final String RULE = "Measure again from the board to the underside of the string.";

    private final BridgeInputs inputs;
    private final ProblemList problems;

    private ValueChecks(BridgeInputs inputs, ProblemList problems) {
        this.inputs = inputs;
        this.problems = problems;
    }

    static void look(BridgeInputs inputs, ProblemList problems) {
        ValueChecks checks = new ValueChecks(inputs, problems);
        checks.lengths();
        checks.board();
        checks.clearances();
        checks.bridge();
        CrownValueChecks.look(inputs.crown(), problems);
        checks.waist();
    }

    private void lengths() {
        double speaking_mm = inputs.speakingLength_mm();
        String advice = "Measure along a string from nut to bridge.";
        problems.require(SPEAKING_LENGTH, "/speaking_length_mm", "The speaking length", speaking_mm, advice);
        if (SPEAKING_LENGTH.holds(speaking_mm)) {
            boardLength(speaking_mm);
        } else {
            String board = "Measure from the nut to the end of the board.";
            problems.require(
                    BOARD_LENGTH,
                    "/board_length_mm",
                    "The board length",
                    inputs.board().length_mm(),
                    board);
        }
    }

    private void boardLength(double speaking_mm) {
        double board_mm = inputs.board().length_mm();
        double shortest_mm = speaking_mm * SHORTEST_BOARD;
        if (!(board_mm >= shortest_mm && board_mm < speaking_mm)) {
            problems.add(
                    "/board_length_mm",
                    board_mm,
                    "The board length is " + PlainNumber.of(board_mm, "mm")
                            + "; it must be at least a tenth of the speaking length, "
                            + PlainNumber.of(shortest_mm, "mm")
                            + ", and less than all of it, " + PlainNumber.of(speaking_mm, "mm")
                            + ". Measure from the nut to the end of the board.");
        }
    }

    private void board() {
        Board board = inputs.board();
        String advice = "Lay a radius template across the board.";
        problems.require(RADIUS, "/board_radius_mm", "The board radius", board.radius_mm(), advice);
        if (board.radiusNut_mm() != null) {
            problems.require(
                    RADIUS, "/board_radius_nut_mm", "The board radius at the nut", board.radiusNut_mm(), advice);
        }
        if (board.scoop_mm() != null) {
            both(SCOOP, "/scoop_mm", "The scoop", board.scoop_mm(), "Measure under a straight edge at mid-length.");
        }
    }

    private void clearances() {
        both(CLEARANCE, "/nut_clearance_mm", "The clearance at the nut", inputs.nutClearance_mm(), RULE);
        both(
                CLEARANCE,
                "/board_end_clearance_mm",
                "The clearance at the board end",
                inputs.boardEndClearance_mm(),
                RULE);
    }

    private void both(Permitted permitted, String at, String what, BassTreble pair, String advice) {
        problems.require(permitted, at + "/bass", what + " under the outer bass string", pair.bass_mm(), advice);
        problems.require(permitted, at + "/treble", what + " under the outer treble string", pair.treble_mm(), advice);
    }

    private void bridge() {
        problems.require(
                PROJECTION,
                "/projection_mm",
                "The projection",
                inputs.projection_mm(),
                "Measure at the bridge, from the belly to the underside of a straight edge laid along the board.");
        problems.require(
                GROOVE,
                "/groove_fraction",
                "The groove depth",
                inputs.grooveFraction(),
                "Give the part of the string's diameter that sits in the groove; a third is usual.");
    }

    private void waist() {
        Waist waist = inputs.waist();
        if (waist != null) {
            problems.require(
                    WAIST,
                    "/waist_width_mm",
                    "The waist width",
                    waist.width_mm(),
                    "Measure between the edges at the bridge.");
            problems.require(
                    EDGE_DROP,
                    "/edge_drop_mm",
                    "The edge drop",
                    waist.edgeDrop_mm(),
                    "Measure how far the top of the edge lies below the belly at the bridge.");
        }
    }
}
