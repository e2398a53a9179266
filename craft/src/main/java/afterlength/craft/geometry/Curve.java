package afterlength.craft.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A chain of cubics, each beginning where the one before ends. It may be open (a string) or closed (the edge of the body). */
public record Curve(List<Cubic> parts) {
    private static final double JOIN_TOLERANCE_MM = 1e-6;

    public Curve {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("curve has 0 parts; give at least 1");
        }
        for (int i = 1; i < parts.size(); i++) {
            requireJoin(parts.get(i - 1).to(), parts.get(i).from());
        }
    }

    public static Curve line(Point from, Point to) {
        return new Curve(List.of(Cubic.line(from, to)));
    }

    public Point start() {
        return parts.get(0).from();
    }

    public Point end() {
        return parts.get(parts.size() - 1).to();
    }

    /** This curve and then the next, which must begin where this one ends. */
    public Curve then(Curve next) {
        List<Cubic> both = new ArrayList<>(parts);
        both.addAll(next.parts);
        return new Curve(both);
    }

    public Curve reversed() {
        List<Cubic> backwards = new ArrayList<>();
        for (Cubic part : parts) {
            backwards.add(0, part.reversed());
        }
        return new Curve(backwards);
    }

    /** From a right half that runs from centre line to centre line: the whole, closed, equal on both sides. */
    public Curve withMirrorImage() {
        return then(moved(Point::mirrored).reversed());
    }

    public Curve mirrored() {
        return moved(Point::mirrored);
    }

    public Curve moved(UnaryOperator<Point> change) {
        return new Curve(parts.stream().map(part -> part.moved(change)).toList());
    }

    public Curve shifted(double deltaX_mm, double deltaY_mm) {
        return moved(point -> point.plus(deltaX_mm, deltaY_mm));
    }

    /** Points along the curve, never further apart than the step; all joints are among them. */
    public List<Point> points(double step_mm) {
        List<Point> points = new ArrayList<>();
        points.add(start());
        for (Cubic part : parts) {
            int count = part.isStraight() ? 1 : Math.max(2, (int) Math.ceil(part.handleLength_mm() * 1.5 / step_mm));
            for (int i = 1; i <= count; i++) {
                points.add(part.at((double) i / count));
            }
        }
        return points;
    }

    /** The closed figure inside the curve, with points no further apart than the step where it bends. */
    public Outline outline(double step_mm) {
        List<Point> ring = points(step_mm);
        requireJoin(end(), start());
        return new Outline(ring.subList(0, ring.size() - 1));
    }

    private static void requireJoin(Point end, Point start) {
        if (end.distanceTo_mm(start) > JOIN_TOLERANCE_MM) {
            throw new IllegalArgumentException("curve ends at " + end + " but goes on at " + start
                    + "; parts must meet within " + JOIN_TOLERANCE_MM + " mm");
        }
    }
}
