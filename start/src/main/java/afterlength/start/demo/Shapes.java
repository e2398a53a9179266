package afterlength.start.demo;

import afterlength.craft.geometry.Cubic;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.awt.geom.Path2D;
import java.util.List;

/** The craft's curves as shapes that can be painted, still in millimetres. */
final class Shapes {
    private Shapes() {}

    static Path2D line(Curve curve) {
        Path2D path = new Path2D.Double();
        path.moveTo(curve.start().x_mm(), curve.start().y_mm());
        for (Cubic part : curve.parts()) {
            path.curveTo(
                    part.leaving().x_mm(),
                    part.leaving().y_mm(),
                    part.arriving().x_mm(),
                    part.arriving().y_mm(),
                    part.to().x_mm(),
                    part.to().y_mm());
        }
        return path;
    }

    static Path2D area(Curve curve) {
        Path2D path = line(curve);
        path.closePath();
        return path;
    }

    static Path2D area(Outline outline) {
        return area(outline.points());
    }

    static Path2D area(List<Point> ring) {
        Path2D path = line(ring);
        path.closePath();
        return path;
    }

    static Path2D line(List<Point> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x_mm(), points.get(0).y_mm());
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.x_mm(), point.y_mm()));
        return path;
    }
}
