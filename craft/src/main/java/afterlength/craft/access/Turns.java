package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The hole at every turn that was asked for. Half a turn is halved again and again, and what was cut once is kept: the same
 * few hundred turns serve every width.
 */
final class Turns {
    /** Enough for a figure of boxes; on a curved edge they are turns like any other. */
    private static final int LONGEST_EDGES = 8;

    private final double[] x;
    private final double[] y;
    private final double longest_mm;
    private final List<TurnedHole> alongEdges = new ArrayList<>();
    private final Map<Integer, TurnedHole> known = new HashMap<>();

    Turns(Outline hole) {
        x = hole.points().stream().mapToDouble(Point::x_mm).toArray();
        y = hole.points().stream().mapToDouble(Point::y_mm).toArray();
        longest_mm = longest();
    }

    /** The middle of one part of the half turn, of 2 to the power of the level such parts. */
    TurnedHole at(int level, int part) {
        return known.computeIfAbsent((1 << level) + part, key -> at(Math.PI * (part + 0.5) / (1 << level)));
    }

    /** At any turn, not kept. */
    TurnedHole at(double turn) {
        return new TurnedHole(x, y, turn);
    }

    /** Turns at which a bar lies along one of the longest straight pieces of the edge, or square to it. */
    List<TurnedHole> alongLongestEdges() {
        if (alongEdges.isEmpty()) {
            List<double[]> edges = new ArrayList<>();
            for (int i = 0, before = x.length - 1; i < x.length; before = i++) {
                double run = x[i] - x[before];
                double rise = y[i] - y[before];
                edges.add(new double[] {Math.hypot(run, rise), Math.atan2(rise, run)});
            }
            edges.sort(Comparator.comparingDouble(edge -> -edge[0]));
            edges.stream().limit(LONGEST_EDGES).forEach(edge -> {
                alongEdges.add(at(edge[1]));
                alongEdges.add(at(edge[1] + Math.PI / 2));
            });
        }
        return alongEdges;
    }

    /** No bar in the hole is longer. */
    double longest_mm() {
        return longest_mm;
    }

    private double longest() {
        double square = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                double run = x[i] - x[j];
                double rise = y[i] - y[j];
                double here = run * run + rise * rise;
                square = here > square ? here : square;
            }
        }
        return Math.sqrt(square);
    }
}
