package afterlength.craft.access;

import java.util.Arrays;

/**
 * Cuts a turned hole into {@link Strip}s: an upright line moves over the corners from left to right, and between the pieces of
 * edge it meets lie the strips. Corners nearer together than {@link #SAME_MM} in x count as one above the other, which moves
 * nothing by more than that.
 *
 * <p>A hole is cut at some hundreds of turns, so all that is known of its edge lies in rows of numbers. A piece of edge has the number
 * of the corner it leads to.
 */
final class Strips {
    private static final double SAME_MM = 1e-9;

    private final Corners corners;
    private final int[] to;
    private final double[] from_x;
    private final double[] from_y;
    private final double[] slope;

    /** The pieces of edge that the upright line meets, from below, and their heights half way to the next level. */
    private final int[] met;

    private final double[] heights;
    private int meeting;

    /** The strips that the line has come into and not yet left. */
    private Strip[] open;

    private Strip[] goingOn;
    private int opened;
    private final Strip[] strips;
    private int count;

    private Strips(double[] x, double[] y) {
        corners = new Corners(x, y, SAME_MM);
        to = new int[x.length];
        from_x = new double[x.length];
        from_y = new double[x.length];
        slope = new double[x.length];
        met = new int[x.length];
        heights = new double[x.length];
        open = new Strip[x.length];
        goingOn = new Strip[x.length];
        strips = new Strip[2 * x.length];
    }

    /** The strips from left to right: each opens only into later ones. */
    static Strip[] of(double[] x, double[] y) {
        Strips strips = new Strips(x, y);
        strips.draw();
        strips.sweep();
        return Arrays.copyOf(strips.strips, strips.count);
    }

    private void draw() {
        int before = to.length - 1;
        for (int i = 0; i < to.length; i++) {
            int left = corners.level[i] > corners.level[before] ? before : i;
            int right = left == i ? before : i;
            to[i] = corners.level[right];
            from_x[i] = corners.levels[corners.level[left]];
            from_y[i] = corners.y[left];
            slope[i] = (corners.y[right] - corners.y[left]) / (corners.levels[to[i]] - from_x[i]);
            before = i;
        }
    }

    private double at(int edge, double x) {
        return from_y[edge] + slope[edge] * (x - from_x[edge]);
    }

    private void sweep() {
        int corner = 0;
        for (int level = 0; level < corners.levels.length; level++) {
            leaveBehind(level);
            while (corner < to.length && corners.level[corners.order[corner]] == level) {
                meet(corners.order[corner++], level);
            }
            if (level + 1 < corners.levels.length) {
                sortAt((corners.levels[level] + corners.levels[level + 1]) / 2);
            }
            advanceTo(corners.levels[level]);
        }
    }

    private void leaveBehind(int level) {
        int staying = 0;
        for (int i = 0; i < meeting; i++) {
            if (to[met[i]] != level) {
                met[staying++] = met[i];
            }
        }
        meeting = staying;
    }

    /** A corner has two pieces of edge; those that lead on to the right are met from here on. */
    private void meet(int corner, int level) {
        int next = corner + 1 == to.length ? 0 : corner + 1;
        if (to[corner] > level) {
            met[meeting++] = corner;
        }
        if (to[next] > level) {
            met[meeting++] = next;
        }
    }

    /** Edges do not cross, so the order found before still holds; only new ones have to find their place. */
    private void sortAt(double middle) {
        for (int i = 0; i < meeting; i++) {
            int edge = met[i];
            double height = at(edge, middle);
            int place = i;
            while (place > 0 && heights[place - 1] > height) {
                met[place] = met[place - 1];
                heights[place] = heights[place - 1];
                place--;
            }
            met[place] = edge;
            heights[place] = height;
        }
    }

    private void advanceTo(double here) {
        int begun = count;
        int going = 0;
        for (int i = 0; i + 1 < meeting; i += 2) {
            goingOn[going++] = goOn(met[i], met[i + 1], here);
        }
        for (int i = 0; i < opened; i++) {
            if (!isAmong(goingOn, going, open[i])) {
                close(open[i], here, begun);
            }
        }
        Strip[] before = open;
        open = goingOn;
        goingOn = before;
        opened = going;
    }

    private static boolean isAmong(Strip[] strips, int count, Strip strip) {
        for (int i = 0; i < count; i++) {
            if (strips[i] == strip) {
                return true;
            }
        }
        return false;
    }

    private Strip goOn(int bottom, int top, double here) {
        for (int i = 0; i < opened; i++) {
            if (open[i].bottom == bottom && open[i].top == top) {
                return open[i];
            }
        }
        Strip strip = new Strip(count, bottom, top, here, at(bottom, here), at(top, here));
        strips[count++] = strip;
        return strip;
    }

    private void close(Strip strip, double here, int begun) {
        strip.closeAt(here, at(strip.bottom, here), at(strip.top, here));
        for (int i = begun; i < count; i++) {
            strip.opensInto(strips[i]);
        }
    }
}
