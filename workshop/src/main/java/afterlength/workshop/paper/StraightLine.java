package afterlength.workshop.paper;

import java.util.List;

/** A straight line between two points. */
public record StraightLine(Point from, Point to, Stroke stroke) implements Shape {
    @Override
    public Bounds bounds() {
        return Bounds.around(List.of(from, to));
    }

    @Override
    public StraightLine moved(double right_mm, double up_mm) {
        return new StraightLine(from.moved(right_mm, up_mm), to.moved(right_mm, up_mm), stroke);
    }

    public double length_mm() {
        return from.distanceTo_mm(to);
    }
}
