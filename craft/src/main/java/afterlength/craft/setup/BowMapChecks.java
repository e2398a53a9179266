package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** What makes a map of the bow impossible, all at once. */
final class BowMapChecks {
    private static final int HIGHEST_STOP = 48;
    private static final Permitted PART = Permitted.above(0, 1, "");

    private BowMapChecks() {}

    static List<Problem> problems(BridgeInputs inputs, BowMapAxes axes) {
        ProblemList problems = new ProblemList();
        look(inputs, axes, problems);
        return problems.list();
    }

    static void look(BridgeInputs inputs, BowMapAxes axes, ProblemList problems) {
        axes(inputs, axes, problems);
        if (axes.forces_N().stream().anyMatch(force_N -> force_N > 0)) {
            BowChecks.tensions(inputs, problems);
        }
    }

    private static void axes(BridgeInputs inputs, BowMapAxes axes, ProblemList problems) {
        notEmpty("/bow/semitones", "stops", axes.semitones(), problems);
        for (int i = 0; i < axes.semitones().size(); i++) {
            stop("/bow/semitones/" + i, axes.semitones().get(i), problems);
        }
        notEmpty("/bow/distances_mm", "distances", axes.distances_mm(), problems);
        for (int i = 0; i < axes.distances_mm().size(); i++) {
            BowChecks.distance("/bow/distances_mm/" + i, axes.distances_mm().get(i), inputs, problems);
        }
        notEmpty("/bow/forces_N", "forces", axes.forces_N(), problems);
        for (int i = 0; i < axes.forces_N().size(); i++) {
            BowChecks.force("/bow/forces_N/" + i, axes.forces_N().get(i), problems);
        }
        problems.require(
                PART,
                "/bow/farthest_part",
                "The farthest place of the bow",
                axes.farthestPart(),
                "Give it as a part of the sounding string; a quarter is usual.");
    }

    private static void notEmpty(String at, String what, List<?> values, ProblemList problems) {
        if (values.isEmpty()) {
            problems.add(
                    at,
                    0,
                    "The map of the bow has no " + what + "; it needs at least one. Name one or leave all out for the"
                            + " usual ones.");
        }
    }

    private static void stop(String at, int semitones, ProblemList problems) {
        if (semitones < 0 || semitones > HIGHEST_STOP) {
            problems.add(
                    at,
                    semitones,
                    "The stop is " + semitones + " semitones above the open string; it must be from 0 to "
                            + HIGHEST_STOP + ". Give 0 for the open string.");
        }
    }
}
