package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import java.util.List;

/** Strings must follow each other from bass to treble without touching, with the centre line between the outer ones. */
final class SpacingChecks {
    private static final Permitted OUTER = Permitted.above(0, 300, "mm");

    private final List<FittedString> strings;
    private final ProblemList problems;
    private final String end;
    private final String where;

    private SpacingChecks(List<FittedString> strings, ProblemList problems, String end) {
        this.strings = strings;
        this.problems = problems;
        this.end = end;
        this.where = "at the " + end;
    }

    static void look(BridgeInputs inputs, ProblemList problems) {
        new SpacingChecks(inputs.strings(), problems, "nut").look(inputs.nutSpacing());
        new SpacingChecks(inputs.strings(), problems, "bridge").look(inputs.bridgeSpacing());
    }

    private void look(StringSpacing spacing) {
        if (spacing instanceof StringSpacing.ByCentres even) {
            outer(spacing, even.outer_mm());
        } else if (spacing instanceof StringSpacing.ByGaps gaps) {
            outer(spacing, gaps.outer_mm());
        } else if (spacing instanceof StringSpacing.Given given) {
            given(given.y_mm());
        }
    }

    private void outer(StringSpacing spacing, double outer_mm) {
        String at = "/" + end + "_spacing_mm";
        String what = "The string spacing " + where;
        if (!OUTER.holds(outer_mm)) {
            problems.require(OUTER, at, what, outer_mm, "Measure between the centres of the outer strings.");
        } else if (touching(spacing.places_mm(strings)) > 0) {
            problems.add(
                    at,
                    outer_mm,
                    what + " is " + PlainNumber.of(outer_mm, "mm") + "; strings of these diameters would touch. Give a"
                            + " wider spacing or check the diameters.");
        }
    }

    /** The first string that touches or passes the one before it, or 0. */
    private int touching(double[] places_mm) {
        for (int i = 1; i < places_mm.length; i++) {
            double halves_mm =
                    (strings.get(i - 1).diameter_mm() + strings.get(i).diameter_mm()) / 2;
            if (places_mm[i] - places_mm[i - 1] <= halves_mm) {
                return i;
            }
        }
        return 0;
    }

    private void given(List<Double> y_mm) {
        if (y_mm.size() != strings.size()) {
            problems.add(
                    "/strings",
                    y_mm.size(),
                    "There are " + y_mm.size() + " places " + where + " for " + strings.size()
                            + " strings; there must be as many of either. Give a place for every string.");
            return;
        }
        boolean finite = true;
        for (int i = 0; i < y_mm.size(); i++) {
            finite &= placeIsFinite(i, y_mm.get(i));
        }
        if (finite) {
            order(y_mm);
        }
    }

    private boolean placeIsFinite(int i, double place_mm) {
        if (!Double.isFinite(place_mm)) {
            problems.add(
                    at(i),
                    place_mm,
                    "The place of string " + name(i) + " " + where
                            + " is not a number; it must be millimetres from the centre line. Measure it, negative to the bass"
                            + " side.");
        }
        return Double.isFinite(place_mm);
    }

    private void order(List<Double> y_mm) {
        int wrong = touching(y_mm.stream().mapToDouble(Double::doubleValue).toArray());
        if (wrong > 0) {
            problems.add(
                    at(wrong),
                    y_mm.get(wrong),
                    "String " + name(wrong) + " lies " + where + " at "
                            + PlainNumber.of(y_mm.get(wrong), "mm") + ", touching or passing string " + name(wrong - 1)
                            + " at " + PlainNumber.of(y_mm.get(wrong - 1), "mm")
                            + "; strings must follow from bass to treble with room between. Measure from the centre line,"
                            + " negative to the bass side.");
        } else if (y_mm.get(0) >= 0 || y_mm.get(y_mm.size() - 1) <= 0) {
            int off = y_mm.get(0) >= 0 ? 0 : y_mm.size() - 1;
            problems.add(
                    at(off),
                    y_mm.get(off),
                    "The outer string " + name(off) + " lies " + where + " at "
                            + PlainNumber.of(y_mm.get(off), "mm")
                            + "; the centre line must run between the outer strings. Measure from the centre line, negative to the"
                            + " bass side.");
        }
    }

    private String at(int i) {
        return "/strings/" + i + "/" + end + "_y_mm";
    }

    private String name(int i) {
        return strings.get(i).name();
    }
}
