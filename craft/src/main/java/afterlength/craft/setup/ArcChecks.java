package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;

/** The outer strings must have the arc of the board under them, at the nut and at the board end. */
final class ArcChecks {
    private final BridgeInputs inputs;
    private final StringLayout layout;
    private final ProblemList problems;

    private ArcChecks(BridgeInputs inputs, ProblemList problems) {
        this.inputs = inputs;
        this.layout = new StringLayout(inputs);
        this.problems = problems;
    }

    static void look(BridgeInputs inputs, ProblemList problems) {
        ArcChecks checks = new ArcChecks(inputs, problems);
        checks.outer(0, inputs.boardEndClearance_mm().bass_mm());
        checks.outer(checks.layout.count() - 1, inputs.boardEndClearance_mm().treble_mm());
    }

    private void outer(int string, double endClearance_mm) {
        double nutRadius_mm = inputs.board().radiusAtNut_mm();
        double endRadius_mm = inputs.board().radius_mm();
        ClearanceConvention convention = inputs.clearanceConvention();
        compare(
                string,
                "nut",
                layout.nutY_mm(string),
                nutRadius_mm,
                convention.widest_mm(nutRadius_mm, layout.nutClearance_mm(string)));
        compare(
                string,
                "bridge",
                layout.boardEndY_mm(string),
                endRadius_mm,
                convention.widest_mm(endRadius_mm, endClearance_mm));
    }

    private void compare(int string, String end, double y_mm, double radius_mm, double widest_mm) {
        if (Math.abs(y_mm) >= widest_mm) {
            String where = end.equals("nut") ? "at the nut" : "at the board end";
            StringSpacing spacing = end.equals("nut") ? inputs.nutSpacing() : inputs.bridgeSpacing();
            String at = spacing instanceof StringSpacing.Given
                    ? "/strings/" + string + "/" + end + "_y_mm"
                    : "/" + end + "_spacing_mm";
            problems.add(
                    at,
                    asked(spacing, string),
                    "String " + inputs.strings().get(string).name() + " lies "
                            + PlainNumber.of(Math.abs(y_mm), "mm") + " from the centre line " + where
                            + "; on a board of radius " + PlainNumber.of(radius_mm, "mm") + " it must be less than "
                            + PlainNumber.of(widest_mm, "mm") + ". Check the string spacing and the board radius.");
        }
    }

    private static double asked(StringSpacing spacing, int string) {
        if (spacing instanceof StringSpacing.Given given) {
            return given.y_mm().get(string);
        }
        return spacing instanceof StringSpacing.ByCentres even
                ? even.outer_mm()
                : ((StringSpacing.ByGaps) spacing).outer_mm();
    }
}
