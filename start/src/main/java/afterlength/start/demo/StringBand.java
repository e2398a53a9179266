package afterlength.start.demo;

import afterlength.craft.geometry.Point;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.List;

/** A string as the picture shows it: a band from one pixel to another that grows broader towards the camera. */
record StringBand(Point from, Point to, double thin, double thick) {

    /** The part between two shares of the half breadth; −1 and 1 are the sides. */
    Shape between(double left, double right) {
        return Shapes.area(List.of(
                aside(from, thin * left),
                aside(to, thick * left),
                aside(to, thick * right),
                aside(from, thin * right)));
    }

    /** Lines across the band, one for each step in pixels. */
    Shape winding(double step) {
        Path2D lines = new Path2D.Double();
        int count = (int) (from.distanceTo_mm(to) / step);
        for (int i = 0; i < count; i++) {
            double share = (double) i / count;
            Point middle = from.towards(to, share);
            double breadth = thin + (thick - thin) * share;
            lines.append(Shapes.line(List.of(aside(middle, -breadth), aside(middle, breadth))), false);
        }
        return lines;
    }

    private Point aside(Point place, double breadth) {
        double way = Math.max(from.distanceTo_mm(to), 1);
        double across = breadth / way / 2;
        return place.plus((to.y_mm() - from.y_mm()) * across, (from.x_mm() - to.x_mm()) * across);
    }
}
