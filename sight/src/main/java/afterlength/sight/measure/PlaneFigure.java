package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import java.util.List;

/** Length of a line through points, and area and outline of the figure they enclose. */
final class PlaneFigure {
    private PlaneFigure() {}

    static double length_mm(List<Point> places) {
        double length_mm = 0;
        for (int n = 1; n < places.size(); n++) {
            length_mm += places.get(n).distanceTo_mm(places.get(n - 1));
        }
        return length_mm;
    }

    static double outline_mm(List<Point> places) {
        return length_mm(places) + places.get(places.size() - 1).distanceTo_mm(places.get(0));
    }

    /** By the shoelace formula; where the outline crosses itself, parts count against each other. */
    static double area_mm2(List<Point> places) {
        double twice_mm2 = 0;
        for (int n = 0; n < places.size(); n++) {
            Point here = places.get(n);
            Point next = places.get((n + 1) % places.size());
            twice_mm2 += here.x_mm() * next.y_mm() - next.x_mm() * here.y_mm();
        }
        return Math.abs(twice_mm2) / 2;
    }
}
