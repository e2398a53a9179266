package afterlength.workshop.paper;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line through several points. A curve is given as many short chords: at a radius of 40 mm chords of 0.5 mm stay within
 * one micrometre of the arc, which is far less than a knife can follow.
 *
 * @param closed whether the last point is joined to the first
 * @param stroke the line, or null for a filled shape without one
 * @param fill what lies inside, or null for nothing
 */
public record Outline(
        List<Point> points,
        boolean closed,
        @Nullable Stroke stroke,
        @Nullable Ink fill) implements Shape {
    public Outline {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "an outline of " + points.size() + " points has no length; give 2 or more");
        }
    }

    @Override
    public Bounds bounds() {
        return Bounds.around(points);
    }

    @Override
    public Outline moved(double right_mm, double up_mm) {
        return new Outline(
                points.stream().map(point -> point.moved(right_mm, up_mm)).toList(), closed, stroke, fill);
    }
}
