package afterlength.workshop.desk;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One stroke of ink as the area the pen covers. The breadth follows the direction of the line: an edge whose outer side looks
 * away from the light is drawn heavier. A closed line is understood to run with its outside on the left hand, as the outlines of
 * the instrument do. Open lines taper towards both ends.
 */
final class InkStroke {
    /** Direction towards the shadow. */
    private static final double SHADOW_X = 0.62;

    private static final double SHADOW_Y = 0.78;
    /** Points are left out where that moves the stroke's edge by less than this share of its thinnest breadth. */
    private static final double TOLERANCE = 0.05;

    private static final double TAPER_SHARE = 0.12;

    private final List<Point> line;
    private final boolean closed;
    private final boolean tapered;
    private final Pen pen;

    private InkStroke(List<Point> line, boolean closed, boolean tapered, Pen pen) {
        this.line = line;
        this.closed = closed;
        this.tapered = tapered;
        this.pen = pen;
    }

    static String closed(List<Point> ring, Pen pen) {
        return new InkStroke(ring, true, false, pen).path();
    }

    static String open(List<Point> line, Pen pen) {
        return new InkStroke(line, false, true, pen).path();
    }

    /** A line of even breadth from end to end, like a string. */
    static String even(List<Point> line, double breadth_mm) {
        return new InkStroke(line, false, false, new Pen(breadth_mm, breadth_mm)).path();
    }

    private String path() {
        List<Point> left = new ArrayList<>();
        List<Point> right = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            addBothSides(i, left, right);
        }
        Collections.reverse(right);
        if (closed) {
            return PathText.closed(slim(left)) + PathText.closed(slim(right));
        }
        left.addAll(right);
        return PathText.closed(slim(left));
    }

    private void addBothSides(int i, List<Point> left, List<Point> right) {
        Point before = neighbour(i, -1);
        Point after = neighbour(i, 1);
        double way_mm = Math.max(before.distanceTo_mm(after), 1e-9);
        double outX = (after.y_mm() - before.y_mm()) / way_mm;
        double outY = -(after.x_mm() - before.x_mm()) / way_mm;
        double half_mm = breadth_mm(outX * SHADOW_X + outY * SHADOW_Y) / 2 * taper(i);
        left.add(line.get(i).plus(outX * half_mm, outY * half_mm));
        right.add(line.get(i).plus(-outX * half_mm, -outY * half_mm));
    }

    private Point neighbour(int i, int step) {
        int count = line.size();
        return closed ? line.get((i + step + count) % count) : line.get(Math.min(Math.max(i + step, 0), count - 1));
    }

    private double breadth_mm(double towardsShadow) {
        double shadow = (1 + towardsShadow) / 2;
        return pen.light_mm() + (pen.shadow_mm() - pen.light_mm()) * shadow * shadow;
    }

    private double taper(int i) {
        double share = (double) i / Math.max(1, line.size() - 1);
        double fromEnd = Math.min(share, 1 - share) / TAPER_SHARE;
        return !tapered || fromEnd >= 1 ? 1 : 0.35 + 0.65 * Math.sqrt(fromEnd);
    }

    private List<Point> slim(List<Point> ring) {
        return new Outline(ring).simplified(TOLERANCE * pen.light_mm()).points();
    }
}
