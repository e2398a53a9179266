package afterlength.workshop.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Parallel lines that fill a closed outline, so that an area is told apart by pattern and not by colour alone. Each line is cut
 * where it meets the outline; between the first and second meeting it is inside, between the second and third outside, and
 * so on. Islands inside the outline are left out.
 */
public final class Hatching {
    private Hatching() {}

    /** Lines at the given distance, turned anticlockwise from the horizontal. */
    public static List<StraightLine> of(List<Point> outline, double distance_mm, double turn_deg, Stroke stroke) {
        if (!(distance_mm > 0)) {
            throw new IllegalArgumentException(
                    "hatching " + distance_mm + " mm apart cannot be drawn; give a distance over 0 mm");
        }
        List<Point> level =
                outline.stream().map(point -> point.turned(-turn_deg)).toList();
        Bounds bounds = Bounds.around(level);
        List<StraightLine> lines = new ArrayList<>();
        double first = Math.floor(bounds.bottom_mm() / distance_mm) + 0.5;
        for (double y_mm = first * distance_mm; y_mm < bounds.top_mm(); y_mm += distance_mm) {
            double[] meetings = meetings(level, y_mm);
            for (int i = 0; i + 1 < meetings.length; i += 2) {
                Point from = new Point(meetings[i], y_mm).turned(turn_deg);
                Point to = new Point(meetings[i + 1], y_mm).turned(turn_deg);
                lines.add(new StraightLine(from, to, stroke));
            }
        }
        return lines;
    }

    private static double[] meetings(List<Point> outline, double y_mm) {
        DoubleStream.Builder meetings = DoubleStream.builder();
        for (int i = 0; i < outline.size(); i++) {
            Point from = outline.get(i);
            Point to = outline.get((i + 1) % outline.size());
            if (from.y_mm() <= y_mm != to.y_mm() <= y_mm) {
                double part = (y_mm - from.y_mm()) / (to.y_mm() - from.y_mm());
                meetings.add(from.x_mm() + part * (to.x_mm() - from.x_mm()));
            }
        }
        return meetings.build().sorted().toArray();
    }
}
