package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import afterlength.craft.units.Problem;
import java.util.List;

/** What is missing or impossible before the load on a bridge can be given. */
final class LoadChecks {
    private static final Permitted AFTER_LENGTH = Permitted.above(0, 1000, "mm");
    private static final Permitted HEIGHT = Permitted.from(-200, 500, "mm");
    private static final Permitted SPACING = Permitted.from(0, 300, "mm");
    private static final Permitted SLOPE = Permitted.from(0, 45, "degrees");
    private static final Permitted FEET = Permitted.above(0, 300, "mm");

    private final BridgeShape shape;
    private final ProblemList problems = new ProblemList();

    private LoadChecks(BridgeShape shape) {
        this.shape = shape;
    }

    static List<Problem> problems(BridgeShape shape, TailEnd tail, double halfFeet_mm) {
        LoadChecks checks = new LoadChecks(shape);
        checks.tail(tail);
        checks.problems.require(
                FEET,
                "/half_feet_mm",
                "The distance of a foot",
                halfFeet_mm,
                "Measure from the centre line to the middle of a foot.");
        for (int i = 0; i < shape.strings().size(); i++) {
            checks.tension(i);
        }
        if (checks.problems.isEmpty()) {
            checks.breaks(tail);
        }
        return checks.problems.list();
    }

    private void tail(TailEnd tail) {
        String along = "Measure from the bridge to the tailpiece fret.";
        problems.require(AFTER_LENGTH, "/break/after_length_mm", "The after-length", tail.afterLength_mm(), along);
        String over = "Measure over the belly at the bridge, along the plane of the edges.";
        problems.require(HEIGHT, "/break/tail_height_mm", "The height at the tailpiece", tail.height_mm(), over);
        String across = "Measure between the outer strings at the tailpiece fret.";
        problems.require(
                SPACING, "/break/tail_spacing_mm", "The string spacing at the tailpiece", tail.spacing_mm(), across);
        String slope = "Measure between the board and the plane of the edges; 6 to 8 degrees is usual.";
        problems.require(SLOPE, "/break/board_slope_deg", "The slope of the board", tail.boardSlope_deg(), slope);
    }

    private void tension(int i) {
        FittedString string = shape.inputs().strings().get(i);
        if (shape.inputs().findTension_N(i).isEmpty()) {
            problems.add(
                    "/strings/" + i + "/tension_N",
                    null,
                    "The tension of string " + string.name()
                            + " is not known; the load needs the tension of every string. Give it, or the linear density and the"
                            + " note.");
        }
    }

    private void breaks(TailEnd tail) {
        double lowest_mm = shape.strings().stream()
                .mapToDouble(string -> string.underside().mm() + shape.inputs().projection_mm())
                .min()
                .orElseThrow();
        if (tail.height_mm() >= lowest_mm) {
            problems.add(
                    "/break/tail_height_mm",
                    tail.height_mm(),
                    "The height at the tailpiece is "
                            + PlainNumber.of(tail.height_mm(), "mm") + "; it must be less than "
                            + PlainNumber.of(lowest_mm, "mm")
                            + ", the lowest string on the bridge, or the string would not press on it. Measure it again.");
        }
    }
}
