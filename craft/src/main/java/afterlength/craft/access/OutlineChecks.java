package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;

/** What an outline has to be before anything is looked for in it. */
final class OutlineChecks {
    /** More than a tracing ever has; the search grows with the square of it. */
    static final int MOST_POINTS = 2000;

    /** Longer than the sound-hole of any double bass, with room for a slip that the person sees in the drawing. */
    private static final double LONGEST_MM = 500;

    private static final double SHORTEST_MM = 1;

    private OutlineChecks() {}

    static List<Problem> problems(Outline hole, String at) {
        List<Problem> problems = new ArrayList<>();
        int count = hole.points().size();
        double size_mm = size_mm(hole);
        if (count > MOST_POINTS) {
            problems.add(new Problem(
                    at,
                    count,
                    "The outline has " + count + " points; it must have 3 to " + MOST_POINTS
                            + ". Take every second point, or trace with a coarser step."));
        } else if (!(size_mm >= SHORTEST_MM && size_mm <= LONGEST_MM)) {
            problems.add(new Problem(
                    at,
                    Math.round(size_mm),
                    "The outline is " + Math.round(size_mm) + " mm long; it must be " + Math.round(SHORTEST_MM) + " to "
                            + Math.round(LONGEST_MM) + " mm. Give the points in millimetres."));
        } else if (!hole.isSimple()) {
            problems.add(new Problem(
                    at, null, "The outline crosses or touches itself. Give the points once, in order round the hole."));
        }
        return problems;
    }

    private static double size_mm(Outline hole) {
        double width_mm = spread(hole.points().stream().mapToDouble(Point::x_mm).toArray());
        double height_mm =
                spread(hole.points().stream().mapToDouble(Point::y_mm).toArray());
        return Math.max(width_mm, height_mm);
    }

    private static double spread(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }
}
