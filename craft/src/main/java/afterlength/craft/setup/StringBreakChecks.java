package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;

/** The heights from which the break of the strings over the bridge follows. */
final class StringBreakChecks {
    private static final Permitted AFTER_LENGTH = Permitted.above(0, 1000, "mm");
    private static final Permitted HEIGHT = Permitted.from(0, 500, "mm");
    private static final Permitted SLOPE = Permitted.from(0, 45, "degrees");

    private final StringBreak.Heights heights;
    private final ProblemList problems;

    StringBreakChecks(StringBreak.Heights heights, ProblemList problems) {
        this.heights = heights;
        this.problems = problems;
    }

    void look() {
        String over = "Measure over one plane along the body.";
        require(
                AFTER_LENGTH,
                "after_length_mm",
                "The after-length",
                heights.afterLength_mm(),
                "Measure along the string.");
        require(HEIGHT, "tail_height_mm", "The height of the string at the tailpiece", heights.tailHeight_mm(), over);
        require(HEIGHT, "bridge_height_mm", "The height of the string at the bridge", heights.bridgeHeight_mm(), over);
        require(SLOPE, "neck_slope_deg", "The slope of the string to the nut", heights.neckSlope_deg(), over);
        double fall_mm = heights.bridgeHeight_mm() - heights.tailHeight_mm();
        if (problems.isEmpty() && (fall_mm < 0 || fall_mm >= heights.afterLength_mm())) {
            problems.add(
                    "/break/tail_height_mm",
                    heights.tailHeight_mm(),
                    "The string at the tailpiece is "
                            + PlainNumber.of(heights.tailHeight_mm(), "mm") + " high; it must be at most "
                            + PlainNumber.of(heights.bridgeHeight_mm(), "mm")
                            + ", the height at the bridge, and less than the"
                            + " after-length below it. " + over);
        }
    }

    private void require(Permitted permitted, String key, String what, double value, String advice) {
        problems.require(permitted, "/break/" + key, what, value, advice);
    }
}
