package afterlength.craft.access;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a turned hole into {@link Strip}s: an upright line moves over the corners from left to right, and between the pieces of
 * edge it meets lie the strips. Corners nearer together than {@link #SAME_MM} in x count as one above the other, which moves
 * nothing by more than that.
 */
final class Strips {
    private static final double SAME_MM = 1e-9;

    /** A piece of the edge of the hole; each is one of its own, so it is known by identity. */
    private static final class Edge {
        private final int to;
        private final double x;
        private final double y;
        private final double slope;

        Edge(int to, double x, double y, double slope) {
            this.to = to;
            this.x = x;
            this.y = y;
            this.slope = slope;
        }

        double at(double x_mm) {
            return y + slope * (x_mm - x);
        }
    }

    /** A strip that the upright line has come into and not yet left. */
    private static final class Open {
        private final Edge bottom;
        private final Edge top;
        private final Strip strip;

        Open(Edge bottom, Edge top, Strip strip) {
            this.bottom = bottom;
            this.top = top;
            this.strip = strip;
        }
    }

    private final double[] x;
    private final double[] y;
    private final double[] levels;
    private final List<Strip> strips = new ArrayList<>();
    private final List<Edge> met = new ArrayList<>();
    private List<Open> open = new ArrayList<>();

    private Strips(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        levels = levels(x);
    }

    /** The strips from left to right: each opens only into later ones. */
    static Strip[] of(double[] x, double[] y) {
        Strips strips = new Strips(x, y);
        strips.sweep();
        return strips.strips.toArray(Strip[]::new);
    }

    private static double[] levels(double[] x) {
        double[] sorted = x.clone();
        Arrays.sort(sorted);
        int count = 1;
        for (double each : sorted) {
            if (each - sorted[count - 1] > SAME_MM) {
                sorted[count++] = each;
            }
        }
        return Arrays.copyOf(sorted, count);
    }

    private void sweep() {
        List<List<Edge>> beginning = edges();
        for (int level = 0; level < levels.length; level++) {
            int here = level;
            met.removeIf(edge -> edge.to == here);
            met.addAll(beginning.get(level));
            if (level + 1 < levels.length) {
                sortAt((levels[level] + levels[level + 1]) / 2);
            }
            advanceTo(levels[level]);
        }
    }

    private List<List<Edge>> edges() {
        List<List<Edge>> beginning = new ArrayList<>();
        for (int level = 0; level < levels.length; level++) {
            beginning.add(new ArrayList<>(2));
        }
        int before = x.length - 1;
        int levelBefore = levelOf(x[before]);
        for (int i = 0; i < x.length; i++) {
            int level = levelOf(x[i]);
            if (level > levelBefore) {
                beginning.get(levelBefore).add(edge(before, levelBefore, i, level));
            } else if (level < levelBefore) {
                beginning.get(level).add(edge(i, level, before, levelBefore));
            }
            before = i;
            levelBefore = level;
        }
        return beginning;
    }

    private int levelOf(double value) {
        int found = Arrays.binarySearch(levels, value);
        return found >= 0 ? found : -found - 2;
    }

    private Edge edge(int left, int from, int right, int to) {
        return new Edge(to, levels[from], y[left], (y[right] - y[left]) / (levels[to] - levels[from]));
    }

    /** Edges do not cross, so the order found before still holds; only new ones have to find their place. */
    private void sortAt(double middle) {
        for (int i = 1; i < met.size(); i++) {
            Edge edge = met.get(i);
            double height = edge.at(middle);
            int place = i;
            while (place > 0 && met.get(place - 1).at(middle) > height) {
                met.set(place, met.get(place - 1));
                place--;
            }
            met.set(place, edge);
        }
    }

    private void advanceTo(double here) {
        List<Open> goingOn = new ArrayList<>(met.size() / 2);
        List<Strip> begun = new ArrayList<>(2);
        for (int i = 0; i + 1 < met.size(); i += 2) {
            goingOn.add(goOn(met.get(i), met.get(i + 1), here, begun));
        }
        for (Open each : open) {
            if (!goingOn.contains(each)) {
                each.strip.closeAt(here, each.bottom.at(here), each.top.at(here));
                begun.forEach(each.strip::opensInto);
            }
        }
        open = goingOn;
    }

    private Open goOn(Edge bottom, Edge top, double here, List<Strip> begun) {
        for (Open each : open) {
            if (each.bottom == bottom && each.top == top) {
                return each;
            }
        }
        Strip strip = new Strip(strips.size(), here, bottom.at(here), top.at(here));
        strips.add(strip);
        begun.add(strip);
        return new Open(bottom, top, strip);
    }
}
