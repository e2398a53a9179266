package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Outlines to try the passage on. */
final class Figures {
    static final GeometryFactory PLANE = new GeometryFactory();

    private Figures() {}

    static Outline of(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(Point.of(coordinates[i], coordinates[i + 1]));
        }
        return new Outline(points);
    }

    static Outline circle(double radius_mm, int points) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * i / points;
            ring.add(Point.of(radius_mm * Math.cos(angle), radius_mm * Math.sin(angle)));
        }
        return new Outline(ring);
    }

    static Outline rectangle(double length_mm, double height_mm) {
        return of(0, 0, length_mm, 0, length_mm, height_mm, 0, height_mm);
    }

    static Outline turned(Outline outline, double angle_deg) {
        double angle = Math.toRadians(angle_deg);
        return new Outline(outline.points().stream()
                .map(p -> Point.of(
                        p.x_mm() * Math.cos(angle) - p.y_mm() * Math.sin(angle),
                        p.x_mm() * Math.sin(angle) + p.y_mm() * Math.cos(angle)))
                .toList());
    }

    /** A simple outline with hollows: by turns a bent slot with eyes, a star of waves, a heap of boxes; 4 to 30 mm long. */
    static Outline drawn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return switch ((int) (seed % 3)) {
            case 0 -> slot(random);
            case 1 -> waves(random, 40 + random.nextInt(160));
            default -> boxes(random);
        };
    }

    static Outline waves(SplittableRandom random, int count) {
        double size_mm = random.nextDouble(2, 5);
        double[] depths = random.doubles(6, -0.16, 0.16).toArray();
        double[] phases = random.doubles(6, 0, 2 * Math.PI).toArray();
        double flat = random.nextDouble(0.3, 1);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * i / count;
            double radius = 1;
            for (int wave = 0; wave < depths.length; wave++) {
                radius += depths[wave] * Math.cos((wave + 2) * angle + phases[wave]);
            }
            radius *= size_mm * random.nextDouble(0.97, 1);
            ring.add(Point.of(radius * Math.cos(angle), flat * radius * Math.sin(angle)));
        }
        return new Outline(ring);
    }

    private static Outline slot(SplittableRandom random) {
        Geometry whole = PLANE.createPolygon();
        double x_mm = 0;
        double y_mm = 0;
        double direction = random.nextDouble(2 * Math.PI);
        for (int part = 0; part < 4; part++) {
            double step_mm = random.nextDouble(1, 6);
            double toX_mm = x_mm + step_mm * Math.cos(direction);
            double toY_mm = y_mm + step_mm * Math.sin(direction);
            Coordinate[] line = {new Coordinate(x_mm, y_mm), new Coordinate(toX_mm, toY_mm)};
            whole = whole.union(PLANE.createLineString(line).buffer(random.nextDouble(0.4, 1.2), 6));
            x_mm = toX_mm;
            y_mm = toY_mm;
            direction += random.nextDouble(-1.1, 1.1);
        }
        whole = whole.union(PLANE.createPoint(new Coordinate(x_mm, y_mm)).buffer(random.nextDouble(1, 2.5), 8));
        return edgeOf(whole);
    }

    private static Outline boxes(SplittableRandom random) {
        Geometry whole = box(0, 0, random.nextDouble(1, 5), random.nextDouble(1, 4));
        for (int part = 0; part < 4; part++) {
            double x_mm = random.nextDouble(-1, 4);
            double y_mm = random.nextDouble(-1, 3);
            Geometry next = box(x_mm, y_mm, random.nextDouble(1, 4), random.nextDouble(0.6, 3));
            whole = whole.union(next).getNumGeometries() == 1 ? whole.union(next) : whole;
        }
        return edgeOf(whole);
    }

    private static Geometry box(double x_mm, double y_mm, double length_mm, double height_mm) {
        return polygon(
                of(x_mm, y_mm, x_mm + length_mm, y_mm, x_mm + length_mm, y_mm + height_mm, x_mm, y_mm + height_mm));
    }

    /** Without islands. */
    private static Outline edgeOf(Geometry geometry) {
        Coordinate[] ring = ((Polygon) geometry).getExteriorRing().getCoordinates();
        return new Outline(Arrays.stream(ring)
                .limit(ring.length - 1)
                .map(place -> Point.of(place.getX(), place.getY()))
                .toList());
    }

    static Polygon polygon(Outline outline) {
        List<Point> points = outline.points();
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point point = points.get(i % points.size());
            ring[i] = new Coordinate(point.x_mm(), point.y_mm());
        }
        return PLANE.createPolygon(ring);
    }
}
