package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** What makes a map of the bow impossible, all at once. */
final class BowMapChecks {
    private static final int HIGHEST_STOP = 48;

    private BowMapChecks() {}

    static List<Problem> problems(BridgeShape shape, BowMapAxes axes) {
        ProblemList problems = new ProblemList();
        stops(axes.semitones(), problems);
        for (int i = 0; i < axes.distances_mm().size(); i++) {
            BowChecks.distance("/bow/distances_mm/" + i, axes.distances_mm().get(i), shape, problems);
        }
        for (int i = 0; i < axes.forces_N().size(); i++) {
            BowChecks.force("/bow/forces_N/" + i, axes.forces_N().get(i), problems);
        }
        if (axes.forces_N().stream().anyMatch(force_N -> force_N > 0)) {
            BowChecks.tensions(shape, problems);
        }
        return problems.list();
    }

    private static void stops(List<Integer> semitones, ProblemList problems) {
        for (int i = 0; i < semitones.size(); i++) {
            int stop = semitones.get(i);
            if (stop < 0 || stop > HIGHEST_STOP) {
                problems.add(
                        "/bow/semitones/" + i,
                        stop,
                        "The stop is " + stop + " semitones above the open string; it must be" + " from 0 to "
                                + HIGHEST_STOP + ". Give 0 for the open string.");
            }
        }
    }
}
